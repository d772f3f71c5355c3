import type { TextItem } from './page.ts';

/*
 * What a reader tells somebody who listens: the tree of a tagged PDF (ISO 32000-1, 14.8). It grows item by item, in reading order, over
 * all pages; lines of one sentence, cells of one table and parts of one picture are brought together.
 */

type Element = PDFKit.PDFStructureElement;

/** How deep elements stand that are open at once: a section, a table in it, a row, a cell, what is in the cell. */
interface Open {
  readonly key: string;
  readonly element: Element;
}

export interface Tags {
  /** @returns the element that a line of text belongs to; it is part of the page, and told to nobody, where that is null */
  readonly forText: (item: TextItem) => Element | null;
  /** @returns the element of a picture, which is begun where it is not the same as before */
  readonly forFigure: (name: string, says: string, box: readonly [number, number, number, number]) => Element;
  /** @returns an element for what stands by itself in the section: a link whose words are nowhere */
  readonly inSection: () => Element;
  readonly end: () => void;
}

/** @returns the tree of a document, empty as yet */
export function tagsOf(pdf: PDFKit.PDFDocument): Tags {
  const whole = pdf.struct('Document');
  pdf.addStructure(whole);
  let open: readonly Open[] = [];
  let count = 0;
  const closeTo = (depth: number): void => {
    for (const { element } of open.slice(depth).reverse()) element.end();
    open = open.slice(0, depth);
  };
  /** Goes down to what the path names, from the first name on that is not open. */
  const at = (path: readonly (readonly [tag: string, key: string, options?: object])[]): Element => {
    const shared = path.findIndex(([, key], i) => open[i]?.key !== key);
    closeTo(shared < 0 ? path.length : shared);
    for (const [tag, key, options] of path.slice(open.length)) {
      const element = pdf.struct(tag, options as PDFKit.Mixins.StructureElementOptions);
      (open.at(-1)?.element ?? whole).add(element);
      open = [...open, { key, element }];
    }
    return open.at(-1)!.element;
  };
  const own = (): string => `${++count}`;
  const section = (): readonly [string, string] => ['Sect', open[0]?.key ?? own()];
  return {
    forText: (item) => {
      if (item.role === 'of the page') return null;
      const sentence = item.of ?? (item.role === 'alarm' ? 'alarm' : own());
      if (item.role === 'heading') {
        const tag = `H${item.level ?? 1}`;
        const key = `${tag} ${sentence}`;
        const goesOn = open[1]?.key === key;
        return at([tag === 'H3' || goesOn ? section() : ['Sect', own()], [tag, key]]);
      }
      if (!item.cell) return at([section(), ['P', `P ${sentence}`]]);
      const { name, row, column, head } = item.cell;
      const cell = head ? (['TH', `column ${column}`, { scope: row === 0 ? 'Column' : 'Row' }] as const) : (['TD', `column ${column}`] as const);
      return at([section(), ['Table', `table ${name}`], ['TR', `row ${row}`], cell, ['P', `P ${sentence}`]]);
    },
    forFigure: (name, says, bbox) => at([section(), ['Figure', `figure ${name}`, { alt: says, bbox, placement: 'Block' }]]),
    inSection: () => at([section(), ['P', own()]]),
    end: () => {
      closeTo(0);
      whole.end();
    },
  };
}
