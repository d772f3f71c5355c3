import type { ReactNode } from 'react';
import { cellSizes } from '../../block/axis.ts';
import type { Block } from '../../block/block.ts';
import { resize } from '../../block/sizing.ts';
import { eachOnce, marksAround, onMark, rulerFit, ruledSides } from '../../cutting/ruler.ts';
import { printLength } from '../../measure/lengths.ts';
import { multiply, rational, toNumber, type Rational } from '../../measure/rational.ts';
import { settled } from '../../pattern/choices.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from '../sheet/Length.tsx';
import type { Doing } from './doing.ts';
import { Notice } from './Notice.tsx';

/** Lengths that are listed one by one; the others are counted. */
const LISTED = 3;

/** How large the cells are, whether the ruler has marks for them and for what is cut, and where it would. */
export function RulerNote({ block, pattern, doing }: {
  readonly block: Block;
  /** The pattern of this very drawing, or null while there is none. */
  readonly pattern: Pattern | null;
  readonly doing: Doing;
}): ReactNode {
  const { unit } = block.finished;
  const { ruler, seam } = settled(block, {});
  const cells = eachOnce([...cellSizes(block, 'columns'), ...cellSizes(block, 'rows')]);
  const cut = pattern ? ruledSides(pattern.pieces, pattern.lattice.step, pattern.units.map(({ finished }) => finished)) : [];
  const { off, smaller, larger } = rulerFit(eachOnce([...cells, ...cut]), block.finished, ruler);
  const mark = printLength(ruler, unit);
  const bare = (length: Rational): string => printLength(length, unit, 'bare');
  const allowances = multiply(seam, rational(2));
  return (
    <div className="grid-part grid-ruler" data-off={off.length > 0 || undefined}>
      <h3>On the ruler</h3>
      <p>
        <Prose text={cellsInWords(block)} />
      </p>
      {off.length === 0 ? (
        <p>
          <Prose text={`Every cell${pattern ? ' and every straight cut' : ''} falls on a mark of the ruler, whose steps are ${mark}`} />
        </p>
      ) : (
        <>
          <p>
            <strong>Not ruler-friendly.</strong>{' '}
            <Prose
              text={
                `Between the ${mark} marks: ` +
                off.slice(0, LISTED).map((length) => `${bare(length)} (${marksAround(length, ruler).map(bare).join(' … ')})`).join(', ') +
                (off.length > LISTED ? ` and ${off.length - LISTED} more.` : '.')
              }
            />{' '}
            {cut.length > 0 && cut.every((length) => onMark(length, ruler))
              ? 'No piece of this drawing has such a size so far.'
              : 'Such pieces are cut rounded up, and rows of them finish too large.'}
          </p>
          {(smaller || larger) && (
            <div className="grid-row">
              <span>Friendly are</span>
              {[smaller, larger].map(
                (size) =>
                  size && (
                    <button
                      key={toNumber(size.width)}
                      type="button"
                      className="plain framed"
                      onClick={() => doing.change('ruler', 'finished size', (now) => resize(now, size))}
                    >
                      <Prose text={`${bare(size.width)} × ${printLength(size.height, unit)}`} />
                    </button>
                  ),
              )}
            </div>
          )}
        </>
      )}
      <Notice place="ruler" said={doing.said} />
      {!onMark(allowances, ruler) && (
        <p>
          <Prose text={`Two allowances, ${printLength(allowances, unit)}, fall between the marks: every cut is rounded up.`} />
        </p>
      )}
    </div>
  );
}

/** @returns "Each cell is 1 × 1 1/2 in." or "Columns 1/2 to 1 1/2 in. wide, rows 1 in. high." */
function cellsInWords(block: Block): string {
  const { unit } = block.finished;
  const [widths, heights] = (['columns', 'rows'] as const).map((axis) => eachOnce(cellSizes(block, axis))) as [Rational[], Rational[]];
  const one = (length: Rational): string => printLength(length, unit);
  const bare = (length: Rational): string => printLength(length, unit, 'bare');
  if (widths.length + heights.length === 2) return `Each cell is ${bare(widths[0]!)} × ${one(heights[0]!)}`;
  const range = (sizes: readonly Rational[]): string => (sizes.length > 1 ? `${bare(sizes[0]!)} to ` : '') + one(sizes.at(-1)!);
  return `Columns are ${range(widths)} wide, rows ${range(heights)} high.`;
}
