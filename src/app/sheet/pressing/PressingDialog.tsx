import { useMemo, useState, type CSSProperties, type ReactNode } from 'react';
import { several } from '../../../measure/words.ts';
import { arrowAcross, backOf, type Back, type PressedSeamClass } from '../../../pattern/diagrams/back.ts';
import { ink, inkAt } from '../../../pattern/diagrams/diagram.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { layersOf } from '../../../sewing/pressing/layers.ts';
import { Dialog } from '../../Dialog.tsx';
import type { Acts } from '../../table.ts';
import { arrowPath } from '../steps/arrow.ts';
import { pathsByFabric } from '../picture.ts';
import { wished, wishesFor, type Wish, type Wished } from './wishes.ts';
import '../../face/watch.css';
import '../../face/pressing.css';

/** How every seam of the block is pressed, on its back; each may be pressed otherwise, and the rest is solved again. */
export default function PressingDialog({ made, pattern, colors, change, close }: {
  /** The drawing on the table, as far as it tells of pressing. */
  readonly made: Wished;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
  readonly change: Acts['change'];
  readonly close: () => void;
}): ReactNode {
  const back = useMemo(() => backOf(pattern), [pattern]);
  const nests = useMemo(() => nestingWords(pattern), [pattern]);
  const [chosen, setChosen] = useState(back.seams.length - 1);
  const at = Math.min(chosen, back.seams.length - 1);
  const seam = back.seams[at]!;
  const step = (by: number): void => setChosen((at + by + back.seams.length) % back.seams.length);
  return (
    <Dialog title="Pressing, seen from the back" className="watch" close={close}>
      <div className="watch-body">
        <Picture back={back} chosen={at} choose={setChosen} pattern={pattern} colors={colors} />
        <p>{nests}</p>
        <section className="pressing-seam" aria-label="One seam">
          <p role="status">{seamWords(seam, pattern)}</p>
          <div className="watch-acts">
            <button type="button" className="plain framed" onClick={() => step(-1)}>
              Seam before
            </button>
            <button type="button" className="plain framed" onClick={() => step(1)}>
              Next seam
            </button>
          </div>
          <Wishes made={made} pattern={pattern} seam={seam} change={change} />
        </section>
      </div>
    </Dialog>
  );
}

/** @returns how well the seams nest, and whether they could better */
function nestingWords({ pressing: { points, sameWay, open, proved }, steps }: Pattern): string {
  const loose = sameWay + open;
  const nest =
    points === 0
      ? 'No seams meet at a point.'
      : loose === 0
        ? `Seams meet at ${several(points, 'point')}, and at every one they lie opposite ways and nest.`
        : `Seams meet at ${several(points, 'point')}; at ${loose === 1 ? 'the one that is ringed' : `the ${loose} that are ringed`} they do not nest${proved ? ', and no other pressing does better' : ''}.`;
  return `${nest} Where it is thickest there are ${several(Math.max(...layersOf(steps)), 'layer')} of cloth.`;
}

function seamWords({ step, number, places }: PressedSeamClass, { choices, fabrics }: Pattern): string {
  const join = step.joins[number - 1]!;
  const name = (thing: number): string => {
    const part = step.parts[thing];
    if (!part) return 'what was sewn before';
    if ('unit' in part.from) return `unit ${part.from.unit}`;
    const { fabric } = part.from;
    return fabrics.find((cloth) => cloth.fabric.id === fabric)?.fabric.name ?? fabric;
  };
  const way = step.pressed[number - 1]!;
  const [one, other] = [name(join.first), name(join.second)];
  const toward = way === 'first' ? one : other;
  // Of two things that are called alike the name says nothing.
  const lies = way === 'open' ? 'open' : one === other ? 'toward one of the two, as the arrow shows' : `toward ${toward}`;
  const what = step.makes === 'block' ? 'the block' : `unit ${step.makes}`;
  const often = places.length > 1 ? `, ${places.length} times in a block` : '';
  return `Step ${step.number}, ${what}: seam ${number} of ${step.joins.length}${often}, pressed ${lies}${choices.blocks > 1 ? ' in each block' : ''}.`;
}

function Wishes({ made, pattern, seam, change }: {
  readonly made: Wished;
  readonly pattern: Pattern;
  readonly seam: PressedSeamClass;
  readonly change: Acts['change'];
}): ReactNode {
  const wishes = wishesFor(made, pattern, seam);
  const [wish] = wishes;
  const press = (how: Wish): void => change(how === 'as solved' ? 'left a seam to the plan' : how === 'open' ? 'pressed a seam open' : 'pressed a seam the other way', (now) => wished(now, pattern, seam, how));
  const isOpen = seam.step.pressed[seam.number - 1] === 'open';
  return (
    <>
      <div className="watch-acts">
        <button type="button" className="plain framed" onClick={() => press('the other way')}>
          {isOpen ? 'Press it to one side' : 'Press it the other way'}
        </button>
        <button type="button" className="plain framed" disabled={isOpen} onClick={() => press('open')}>
          Press it open
        </button>
        <button type="button" className="plain framed" disabled={!wish} onClick={() => press('as solved')}>
          Leave it to the plan
        </button>
      </div>
      <p className="quiet">{wish ? 'You chose how this seam is pressed; the others follow.' : 'The plan chose how this seam is pressed.'}</p>
    </>
  );
}

function Picture({ back: { seams, loose }, chosen, choose, pattern, colors }: {
  readonly back: Back;
  readonly chosen: number;
  readonly choose: (seam: number) => void;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const [width, height] = [ink(pattern.block.finished.width), ink(pattern.block.finished.height)];
  const scale = ink(pattern.lattice.step);
  const size = Math.max(width, height);
  const room = size * 0.03;
  const pieces = pattern.pieces.map(({ fabric, outline }) => ({ fabric, outline: outline.map((point) => inkAt(point, scale)) }));
  const line = ({ from, to }: PressedSeamClass['places'][number]): string => `M${from.join(' ')}L${to.join(' ')}`;
  const arrows = (each: PressedSeamClass): string => each.places.map((place) => arrowPath(arrowAcross(place, size), place.toward === null)).join('');
  return (
    <svg className="watch-picture" viewBox={`${-room} ${-room} ${width + 2 * room} ${height + 2 * room}`} role="img" aria-label="The back of the block with an arrow across every seam">
      <g transform={`translate(${width}) scale(-1 1)`}>
        {[...pathsByFabric(pieces)].map(([fabric, path]) => (
          <path key={fabric} className="pressing-cloth" d={path} style={{ '--cloth': colors.get(fabric) } as CSSProperties} />
        ))}
        {seams.map((seam, i) => (
          <g key={i} className="pressing-line" data-chosen={i === chosen || undefined} onClick={() => choose(i)}>
            <path className="pressing-hold" d={seam.places.map(line).join('')} />
            <path className="pressing-stitches" d={seam.places.map(line).join('')} />
            <path className="pressing-arrow halo" d={arrows(seam)} />
            <path className="pressing-arrow" d={arrows(seam)} />
          </g>
        ))}
        {loose.map(({ at: [x, y] }, i) => (
          <circle key={i} className="pressing-loose" cx={x} cy={y} r={size * 0.014} />
        ))}
      </g>
    </svg>
  );
}
