import type { ReactNode } from 'react';
import type { Figures } from '../../geometry/piecing/assembly.ts';
import { GOOD_FOR, WAYS, type Way } from '../../geometry/piecing/way.ts';
import type { Alternative, Pattern } from '../../pattern/pattern.ts';

const several = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** @returns the figures of a way in one line */
export function figuresLine(figures: Figures): string {
  const said = [
    several(figures.pieces, 'piece', 'pieces'),
    several(figures.seams, 'seam', 'seams'),
    several(figures.differentUnits, 'kind of unit', 'kinds of unit'),
  ];
  return [...said, ...remarksOn(figures)].join(' · ');
}

/** @returns what a way needs besides pieces and seams, where it needs it */
function remarksOn(figures: Figures): string[] {
  const remarks: string[] = [];
  if (figures.partialSeams > 0) remarks.push(several(figures.partialSeams, 'partial seam', 'partial seams'));
  if (figures.setInSeams > 0) remarks.push(several(figures.setInSeams, 'set-in seam', 'set-in seams'));
  return remarks;
}

/** The ways to sew the block, to choose one. */
export function Ways({ pattern, ways, chosen, chooseWay }: {
  readonly pattern: Pattern;
  /** Every way there is; null while the others are looked for. */
  readonly ways: readonly Alternative[] | null;
  readonly chosen: Way;
  readonly chooseWay: (way: Way) => void;
}): ReactNode {
  const { way, figures } = pattern;
  const others = ways?.filter((each) => each.way !== way) ?? [];
  if (ways !== null && others.length === 0) return null;
  const own = ways?.find((each) => each.way === way) ?? { way, figures };
  const shown = [own, ...others].sort((a, b) => WAYS.indexOf(a.way) - WAYS.indexOf(b.way));
  return (
    <fieldset className="ways" data-ways={ways === null ? 'looking' : ways.length}>
      <legend>Ways to sew it</legend>
      <div className="way-row">
        {shown.map((each) => (
          <WayLine key={each.way} way={each.way} figures={each.figures} chosen={each.way === chosen} choose={() => chooseWay(each.way)} />
        ))}
      </div>
      <p className="quiet ways-looking" role="status">
        {ways === null ? 'Looking for other ways …' : ''}
      </p>
    </fieldset>
  );
}

function WayLine({ way, figures, chosen, choose }: {
  readonly way: Way;
  readonly figures: Figures;
  readonly chosen: boolean;
  readonly choose: () => void;
}): ReactNode {
  const said = [several(figures.pieces, 'piece', 'pieces'), several(figures.seams, 'seam', 'seams'), ...remarksOn(figures)];
  return (
    <label className="way">
      <input type="radio" name="way" value={way} checked={chosen} onChange={choose} />
      <span className="way-words">
        <span className="way-head">
          <span className="way-name">{way}</span>
          <span className="way-figures">{said.join(' · ')}</span>
        </span>
        <span className="quiet good-for">{GOOD_FOR[way]}</span>
      </span>
    </label>
  );
}
