import { useId, useMemo, type ReactNode } from 'react';
import { aboutLength } from '../../../measure/about.ts';
import { printLength } from '../../../measure/lengths.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { cutsAt, listAt, type OtherSize } from '../../../pattern/sizes.ts';
import { FabricCuts } from '../FabricCuts.tsx';
import { Area, Prose } from '../Length.tsx';

/** One size: its marks, and unfolded what to cut. */
export function SizeRow({ size, pattern, mark, cloth, open, toggle, make }: {
  readonly size: OtherSize;
  readonly pattern: Pattern;
  readonly mark: ReactNode;
  /** What is bought of all fabrics together; null while that is not known. */
  readonly cloth: string | null;
  readonly open: boolean;
  readonly toggle: () => void;
  readonly make: () => void;
}): ReactNode {
  const { finished, asItIs, cannot, narrowest } = size;
  const { unit } = pattern.block;
  const listId = useId();
  const said = `${printLength(finished.width, unit, 'bare')} by ${printLength(finished.height, unit)}`;
  return (
    <>
      <tr data-as-it-is={asItIs || undefined} data-cannot={cannot !== null || undefined}>
        <th scope="row">
          {cannot === null ? (
            <button type="button" className="plain unfold size-unfold" aria-expanded={open} aria-controls={open ? listId : undefined} onClick={toggle}>
              <Area size={finished} unit={unit} />
              <span className="unseen">: what to cut</span>
            </button>
          ) : (
            <span className="size-name">
              <Area size={finished} unit={unit} />
            </span>
          )}
        </th>
        <td>{mark}</td>
        {cannot === null ? (
          <>
            <td>
              <Prose text={aboutLength(narrowest, unit)} />
            </td>
            <td>{cloth === null ? <span className="quiet">…</span> : <Prose text={cloth} />}</td>
            <td className="size-make">
              {asItIs ? (
                <span className="quiet">as it is</span>
              ) : (
                <button type="button" className="plain framed" aria-label={`Make the block ${said}`} onClick={make}>
                  Make it so
                </button>
              )}
            </td>
          </>
        ) : (
          <td colSpan={3} className="quiet">
            <Prose text={cannot} />
          </td>
        )}
      </tr>
      {open && cannot === null && (
        <tr className="size-list" id={listId}>
          <td colSpan={5}>
            <SizeList size={size} pattern={pattern} />
          </td>
        </tr>
      )}
    </>
  );
}

/** What to cut at one size, fabric by fabric. */
function SizeList({ size, pattern }: { readonly size: OtherSize; readonly pattern: Pattern }): ReactNode {
  const { unit } = pattern.block;
  const lists = useMemo(() => listAt(pattern, cutsAt(pattern, size.finished.width)), [pattern, size]);
  return (
    <div className="size-cloths">
      <p className="quiet">
        <Area size={size.unfinished} unit={unit} /> unfinished
      </p>
      {lists.map(({ fabric, buy, cuts }) => (
        <section key={fabric.id} className="size-cloth">
          <FabricCuts fabric={fabric} get={buy} cuts={cuts} unit={unit} chip="size-chip" heading="h3" />
        </section>
      ))}
    </div>
  );
}
