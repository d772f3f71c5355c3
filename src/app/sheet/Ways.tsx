import { Fragment, type ReactNode } from 'react';
import type { Figures } from '../../geometry/piecing/assembly.ts';
import { GOOD_FOR, WAYS, type Way } from '../../geometry/piecing/way.ts';
import { several } from '../../measure/words.ts';
import type { Alternative, Pattern } from '../../pattern/pattern.ts';

/** @returns "proved least" or "at least 60", where that is known of the number of pieces; empty where it is not */
const leastWords = ({ pieces, bound }: Figures): string => (bound === undefined ? '' : bound === pieces ? 'proved least' : `at least ${bound}`);

/** @returns the figures of a way, each as a remark of its own; those that are nothing to mention left out */
function remarksOn(figures: Figures): string[] {
  const { pieces, seams, partialSeams, setInSeams, templates, matchedPoints } = figures;
  const least = leastWords(figures);
  const remarks = [several(pieces, 'piece', 'pieces') + (least && ` (${least})`), several(seams, 'seam', 'seams')];
  if (partialSeams > 0) remarks.push(several(partialSeams, 'partial seam', 'partial seams'));
  if (setInSeams > 0) remarks.push(several(setInSeams, 'set-in seam', 'set-in seams'));
  if (templates > 0) remarks.push(several(templates, 'template piece', 'template pieces'));
  if (matchedPoints > 0) remarks.push(`${several(matchedPoints, 'point', 'points')} to match`);
  return remarks;
}

/** @returns the figures of a way in one line */
export function figuresLine(figures: Figures): string {
  const [pieces, seams, ...others] = remarksOn(figures);
  return [pieces, seams, several(figures.differentUnits, 'kind of unit', 'kinds of unit'), ...others].join(' · ');
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
  return (
    <label className="way">
      <input type="radio" name="way" value={way} checked={chosen} onChange={choose} />
      <span className="way-words">
        <span className="way-head">
          <span className="way-name">{way}</span>
          <span className="way-figures">
            {remarksOn(figures).map((remark, i) => (
              <Fragment key={remark}>
                {i > 0 && ' · '}
                <span className="remark">{remark}</span>
              </Fragment>
            ))}
          </span>
        </span>
        <span className="quiet good-for">{GOOD_FOR[way]}</span>
      </span>
    </label>
  );
}
