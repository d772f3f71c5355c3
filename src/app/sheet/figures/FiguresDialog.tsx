import { useMemo, useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import { capital } from '../../../measure/words.ts';
import { actWords, ASSUMED, figureLines, STAGE_WORDS, timesWords } from '../../../pattern/figure-words.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { aboutTime, secondsTime } from '../../../pattern/time-words.ts';
import { workFigures } from '../../../pattern/work-figures.ts';
import { STAGES, USUAL_TIMES, workTime, type Act, type WorkTime } from '../../../pattern/work-time.ts';
import { Dialog } from '../../Dialog.tsx';
import { useStore } from '../../store.ts';
import { TypedField } from '../cloth/TypedField.tsx';
import { Prose } from '../Length.tsx';
import { times } from './assumed.ts';
import { typedTime } from './typed-time.ts';
import '../../face/cloth.css';
import '../../face/figures.css';

/** The figures by which to choose, each with what it means; and the time, thing by thing, with what it is reckoned from. */
export default function FiguresDialog({ pattern, close }: { readonly pattern: Pattern; readonly close: () => void }): ReactNode {
  const lines = useMemo(() => figureLines(workFigures(pattern), pattern), [pattern]);
  const assumed = useStore(times, (now) => now);
  const time = useMemo(() => workTime(pattern, assumed), [pattern, assumed]);
  return (
    <Dialog title="Figures and time" className="work" close={close}>
      <table className="work-figures">
        <thead className="unseen">
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">In this pattern</th>
            <th scope="col">What it means</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ name, says, means }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="work-says">
                <Prose text={says} />
              </td>
              <td className="work-means quiet">
                <Prose text={means} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <Time time={time} blocks={pattern.choices.blocks} unit={pattern.block.unit} />
    </Dialog>
  );
}

function Time({ time, blocks, unit }: { readonly time: WorkTime; readonly blocks: number; readonly unit: LengthUnit }): ReactNode {
  const { total, perBlock, stages } = time;
  const own = useStore(times, (now) => now);
  // What stands refused in a field goes too when all go back.
  const [back, setBack] = useState(0);
  const usual = time.acts.every(({ act }) => own[act] === USUAL_TIMES[act]);
  return (
    <section aria-labelledby="work-time-title">
      <h3 id="work-time-title">Time</h3>
      <p className="work-total" role="status">
        About <strong>{aboutTime(total)}</strong>
        {blocks > 1 && `, ${aboutTime(perBlock)} a block`}, reckoned {usual ? 'with the usual times' : 'with times of your own'}
      </p>
      <p className="quiet">
        {ASSUMED} Type your own: they are kept in this browser, not in the file. A seam that
        runs through several units before they are cut apart is begun once. Choosing, unpicking and rests are not counted.
      </p>
      {STAGES.map((stage) => (
        <section key={stage} aria-label={STAGE_WORDS[stage]} className="work-stage">
          <h4>
            {STAGE_WORDS[stage]} <span className="work-takes">{secondsTime(stages[stage])}</span>
          </h4>
          <ul>
            {time.acts.filter((each) => each.stage === stage).map((each) => (
              <li key={each.act} className="work-act" data-act={each.act}>
                <TypedField key={back} label={`For each ${actWords(each.act, unit)}`} said={secondsTyped(own[each.act], unit)} take={taking(each.act)} />
                <p>
                  {capital(timesWords(each.act, each.times, unit))} <span className="work-takes">{secondsTime(each.takes)}</span>
                </p>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <button
        type="button"
        className="plain framed"
        onClick={() => {
          times.set(USUAL_TIMES);
          setBack(back + 1);
        }}
      >
        Back to the usual times
      </button>
    </section>
  );
}

/** @returns seconds as they would be typed, with a comma beside centimetres */
const secondsTyped = (seconds: number, unit: LengthUnit): string => `${unit === 'in' ? seconds : `${seconds}`.replace('.', ',')} s`;

const taking = (act: Act) => (text: string): string | null => {
  const read = typedTime(text);
  if (!read.ok) return read.problem.sentence;
  times.change((now) => ({ ...now, [act]: read.value }));
  return null;
};
