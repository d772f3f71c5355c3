import { useMemo, useState, type ReactNode } from 'react';
import type { Block } from '../../../block/block.ts';
import { resize } from '../../../block/sizing.ts';
import { typedLength } from '../../../block/typed-size.ts';
import { printLength } from '../../../measure/lengths.ts';
import { bad, good, type Result } from '../../../measure/problem.ts';
import type { Rational } from '../../../measure/rational.ts';
import { several } from '../../../measure/words.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { otherSizes, usualRange, type OtherSize, type SizeRange } from '../../../pattern/sizes.ts';
import { Dialog } from '../../Dialog.tsx';
import { Prose } from '../Length.tsx';
import { RulerMark } from './RulerMark.tsx';
import { SizeRow } from './SizeRow.tsx';
import { useCloths } from './use-cloths.ts';
import '../../face/sizes.css';

const FIELDS: readonly (readonly [keyof SizeRange, string])[] = [
  ['from', 'From'],
  ['to', 'To'],
  ['step', 'In steps of'],
];

/** The block at other finished sizes: which the ruler has marks for, what to cut at each; and the block made that size. */
export default function Sizes({ pattern, change, close }: {
  readonly pattern: Pattern;
  readonly change: (label: string, verb: (block: Block) => Result<Block>) => void;
  readonly close: () => void;
}): ReactNode {
  const { block, choices } = pattern;
  const { unit } = block;
  const [typed, setTyped] = useState<Readonly<Record<keyof SizeRange, string>>>(() => {
    const { from, to, step } = usualRange(pattern);
    const bare = (length: Rational): string => printLength(length, unit, 'bare');
    return { from: bare(from), to: bare(to), step: bare(step) };
  });
  const [onlyOn, setOnlyOn] = useState(false);
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const sizes = useMemo(() => sizesTyped(pattern, typed), [pattern, typed]);
  const all = sizes.ok ? sizes.value : [];
  const on = all.filter(({ cannot, off }) => cannot === null && off.length === 0);
  const shown = onlyOn ? on : all;
  const cloths = useCloths(pattern, shown);
  const make = (size: OtherSize): void => {
    const { width, height } = size.finished;
    change(`made the block ${printLength(width, unit, 'bare')} by ${printLength(height, unit)}`, (now) => resize(now, { width, height, unit }));
    close();
  };
  return (
    <Dialog title={`${block.name || 'The block'} at other sizes`} className="wide size-sheet" close={close}>
      <div className="sizes-range">
        {FIELDS.map(([name, label]) => (
          <label key={name} className="field">
            <span>{label}</span>
            <input
              type="text"
              value={typed[name]}
              autoComplete="off"
              aria-describedby="sizes-problem"
              aria-invalid={!typedLength(typed[name], unit).ok || undefined}
              onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
            />
          </label>
        ))}
        <label className="sizes-only">
          <input type="checkbox" checked={onlyOn} onChange={(event) => setOnlyOn(event.target.checked)} />
          <span>Only those on the ruler</span>
        </label>
      </div>
      <p id="sizes-problem" role="alert" className={sizes.ok ? 'unseen' : 'sheetlet-problem'}>
        {sizes.ok ? '' : sizes.problem.sentence}
      </p>
      {sizes.ok && (
        <p className="sizes-said" role="status">
          {several(all.length, 'size')}, {on.length === 0 ? 'none of them' : on.length === all.length ? 'all of them' : `${on.length} of them`} on the ruler: there every
          plain cut and every unit falls on a mark (<Prose text={`steps of ${printLength(choices.ruler, unit)}`} />
          ). What is cut for a diagonal seam is rounded up at any size, by its own rule.
          {choices.blocks > 1 && ` The lists are for ${choices.blocks} blocks.`}
        </p>
      )}
      {shown.length > 0 && (
        <table className="sizes-table">
          <thead>
            <tr>
              <th scope="col">Finished</th>
              <th scope="col">Ruler</th>
              <th scope="col">Narrowest piece</th>
              <th scope="col">Cloth in all</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {shown.map((size) => {
              const key = `${size.finished.width.n}/${size.finished.width.d}`;
              return (
                <SizeRow
                  key={key}
                  size={size}
                  pattern={pattern}
                  mark={<RulerMark size={size} unit={unit} />}
                  cloth={cloths.get(key) ?? null}
                  open={open.has(key)}
                  toggle={() => setOpen(new Set(open.has(key) ? [...open].filter((other) => other !== key) : [...open, key]))}
                  make={() => make(size)}
                />
              );
            })}
          </tbody>
        </table>
      )}
    </Dialog>
  );
}

/** @returns the sizes of a range as typed, or in one sentence what is wrong with it */
function sizesTyped(pattern: Pattern, typed: Readonly<Record<keyof SizeRange, string>>): Result<readonly OtherSize[]> {
  const read: { -readonly [name in keyof SizeRange]?: Rational } = {};
  for (const [name, label] of FIELDS) {
    const length = typedLength(typed[name], pattern.block.unit);
    if (!length.ok) return bad(length.problem.code, `${label}: ${length.problem.sentence}`);
    read[name] = length.value;
  }
  const sizes = otherSizes(pattern, usualRange(pattern, read));
  return sizes.ok ? good(sizes.value) : sizes;
}
