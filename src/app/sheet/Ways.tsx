import type { ReactNode } from 'react';
import type { Figures } from '../../geometry/piecing/assembly.ts';
import { GOOD_FOR, WAYS, type Way } from '../../geometry/piecing/way.ts';
import type { Pattern } from '../../pattern/pattern.ts';

const several = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** @returns the figures of a way in one line */
export function figuresLine(figures: Figures): string {
  const said = [
    several(figures.pieces, 'piece', 'pieces'),
    several(figures.seams, 'seam', 'seams'),
    several(figures.differentUnits, 'kind of unit', 'kinds of unit'),
  ];
  if (figures.partialSeams > 0) said.push(several(figures.partialSeams, 'partial seam', 'partial seams'));
  if (figures.setInSeams > 0) said.push(several(figures.setInSeams, 'set-in seam', 'set-in seams'));
  return said.join(' · ');
}

/** The ways to sew the block, to choose one. */
export function Ways({ pattern, chosen, chooseWay }: {
  readonly pattern: Pattern;
  readonly chosen: Way;
  readonly chooseWay: (way: Way) => void;
}): ReactNode {
  const others = pattern.alternatives.filter(({ way }) => way !== pattern.way);
  if (others.length === 0) return null;
  const ways = [{ way: pattern.way, figures: pattern.figures }, ...others];
  ways.sort((a, b) => WAYS.indexOf(a.way) - WAYS.indexOf(b.way));
  return (
    <fieldset className="ways">
      <legend>Ways to sew it</legend>
      <div className="way-row">
        {ways.map(({ way, figures }) => (
          <label key={way} className="way">
            <input type="radio" name="way" value={way} checked={chosen === way} onChange={() => chooseWay(way)} />
            <span className="way-words">
              <span>
                <span className="way-name">{way}</span> {several(figures.pieces, 'piece', 'pieces')},{' '}
                {several(figures.seams, 'seam', 'seams')}
              </span>
              <span className="quiet good-for">{GOOD_FOR[way]}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
