import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

/** What another program (pdf.js) finds on a page: its size, its texts, and the places every drawn line goes through, y downwards. */
export async function pagesIn(file: Uint8Array) {
  const pdf = await getDocumentProxy(file.slice());
  const { OPS } = await getResolvedPDFJS();
  return Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => {
      const page = await pdf.getPage(i + 1);
      const [, , width, height] = page.view as [number, number, number, number];
      const { fnArray, argsArray } = await page.getOperatorList();
      const drawn = fnArray.flatMap((kind, at): [number, number][][] => {
        if (kind !== OPS.constructPath) return [];
        // Kinds of step, each before its numbers: a move and a line have 2, a curve 6, a closing none.
        const steps = [...Object.values((argsArray[at] as [number, [Record<string, number>]])[1][0])];
        const places: [number, number][] = [];
        for (let k = 0; k < steps.length; ) {
          const long = { 0: 2, 1: 2, 2: 6 }[steps[k]!] ?? 0;
          if (long > 0) places.push([steps[k + long - 1]!, steps[k + long]!]);
          k += long + 1;
        }
        return [places];
      });
      const { items } = await page.getTextContent();
      const said = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item.str] : []));
      const links = (await page.getAnnotations()).flatMap(({ subtype, dest, rect }: { subtype: string; dest: string; rect: number[] }) =>
        subtype === 'Link' ? [{ dest, rect }] : [],
      );
      return { width, height, drawn, said, links, images: fnArray.filter((kind) => kind === OPS.paintImageXObject).length, tree: await page.getStructTree() };
    }),
  );
}

export interface Bookmark {
  readonly title: string;
  /** Which page, from 0, and how far below its top in points. */
  readonly page: number;
  readonly down: number;
  readonly under: readonly Bookmark[];
}

/** @returns the bookmarks of a file, each with where it leads */
export async function bookmarksIn(file: Uint8Array): Promise<readonly Bookmark[]> {
  const pdf = await getDocumentProxy(file.slice());
  type Entry = { readonly title: string; readonly dest: [never, unknown, number, number]; readonly items: Entry[] };
  const read = async ({ title, dest, items }: Entry): Promise<Bookmark> => {
    const page = await pdf.getPageIndex(dest[0]);
    const [, , , height] = (await pdf.getPage(page + 1)).view as [number, number, number, number];
    return { title, page, down: height - dest[3], under: await Promise.all(items.map(read)) };
  };
  return Promise.all((((await pdf.getOutline()) ?? []) as unknown as Entry[]).map(read));
}

/** @returns which pages, from 0, named places are on; null where there is none */
export async function pagesOf(file: Uint8Array, names: readonly string[]): Promise<readonly (number | null)[]> {
  const pdf = await getDocumentProxy(file.slice());
  return Promise.all(
    names.map(async (name) => {
      const dest = (await pdf.getDestination(name)) as [never] | null;
      return dest === null ? null : pdf.getPageIndex(dest[0]);
    }),
  );
}

/** @returns title, language and the like, as the file says them */
export async function infoOf(file: Uint8Array): Promise<Record<string, unknown>> {
  return ((await (await getDocumentProxy(file.slice())).getMetadata()) as unknown as { info: Record<string, unknown> }).info;
}
