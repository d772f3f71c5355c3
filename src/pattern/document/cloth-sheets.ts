import type { LengthUnit } from '../../block/block.ts';
import { clothTiles, leftovers } from '../../cutting/laid.ts';
import { compare, equals, lesser, rational, subtract, ZERO, type Rational } from '../../measure/rational.ts';
import { clothLayout, type LayoutWords } from '../diagrams/cloth-layout.ts';
import type { Cloth } from '../pattern.ts';
import { KEPT } from '../telling/kept.ts';
import type { Flow, Section } from './content.ts';
import { bare, size, type Writing } from './writing.ts';

/** So many leftovers are worth telling, the largest. */
const TOLD = 3;
/** Narrower ones are not (common practice). */
const WORTH: Readonly<Record<LengthUnit, Rational>> = { in: rational(1), cm: rational(5, 2) };

/** @returns how everything lies on its cloth, fabric by fabric; null where all is cut from scraps */
export function clothSection(writing: Writing): Section | null {
  const {
    pattern,
    words: { cloth, titles },
    said,
  } = writing;
  const sheets = pattern.fabrics.filter(({ layout }) => layout.cloths.length > 0);
  if (sheets.length === 0) return null;
  return {
    name: 'cloth',
    title: said('cloth/title', titles.cloth),
    ownPage: false,
    items: [
      { flow: 'paragraph', said: said('cloth/intro', cloth.intro), look: 'plain' },
      ...sheets.map((sheet) => clothFlow(writing, sheet)),
    ],
  };
}

function clothFlow(writing: Writing, { fabric, layout, bought, buy, length: taken }: Cloth): Flow {
  const {
    pattern,
    words: { cloth },
    said,
    print,
  } = writing;
  const at = `cloth/fabric ${fabric.id}`;
  const spare = bought && subtract(subtract(bought, pattern.choices.squaringUp), taken);
  const tiles = clothTiles(layout.cloths, pattern.cuts, spare ?? ZERO);
  const sides = (width: Rational, height: Rational): string =>
    equals(width, height) ? bare(writing, width) : `${bare(writing, width)} × ${bare(writing, height)}`;
  const inPicture: LayoutWords = {
    cut: KEPT.cut,
    size: sides,
    strip: (times, width) => cloth.strip(times, bare(writing, width)),
    more: cloth.more,
  };
  const name = KEPT.cloth(fabric.id);
  const worth = WORTH[pattern.block.unit];
  const left = leftovers(tiles)
    .filter(({ width, length: long }) => compare(lesser(width, long), worth) >= 0)
    .slice(0, TOLD)
    .map(({ count, width, length: long }) => ({ count, size: size(writing, { width, height: long }) }));
  const file = fabric.id.toLowerCase().replaceAll(/[^a-z0-9]+/gu, '-');
  return {
    flow: 'together',
    items: [
      { flow: 'heading', level: 3, said: said(at, name) },
      {
        flow: 'figures',
        at: `${at}/pictures`,
        figures: tiles.map((each, i) => {
          const { source, times, width, height, step } = each;
          const measures = cloth.form(
            source.form,
            buy,
            size(writing, { width: source.width, height: source.length ?? { n: height * step.n, d: step.d } }),
          );
          const more = times > 1 ? ` ${cloth.alike(times)}` : '';
          return {
            figure: {
              name: `cloth-${file}-${i + 1}`,
              says: print(cloth.shows(name, measures)),
              ...clothLayout({ ...each, width }, fabric.id, inPicture),
            },
            caption: said(`${at}/cloth ${i + 1}`, `${measures}${more}`),
          };
        }),
        most: 0.35,
      },
      ...(fabric.directional ? [{ flow: 'paragraph', said: said(`${at}/directional`, cloth.directional), look: 'plain' } as const] : []),
      ...(left.length === 0 ? [] : [{ flow: 'paragraph', said: said(`${at}/left`, cloth.left(left)), look: 'quiet' } as const]),
    ],
  };
}
