import { useEffect, useEffectEvent, useMemo, useRef, useState, type ReactNode } from 'react';
import { playThrough, type Moment, type PlayThrough } from '../../../pattern/diagrams/play-through.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { Dialog } from '../../Dialog.tsx';
import { ClothPaths } from '../ClothPaths.tsx';
import { Area } from '../Length.tsx';
import { usePlaying } from './use-playing.ts';
import '../../face/watch.css';

/** Seams in a second. */
const SPEEDS = { slowest: 0.25, usual: 1, fastest: 8 } as const;

/** The block sewn on the screen, from cut pieces to the whole, forward and back. */
export default function WatchDialog({ pattern, colors, close }: {
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
  readonly close: () => void;
}): ReactNode {
  const play = useMemo(() => playThrough(pattern), [pattern]);
  const last = play.moments.length;
  const [speed, setSpeed] = useState<number>(SPEEDS.usual);
  const { done, playing, goTo, start, stop } = usePlaying(last, speed);
  const whole = Math.floor(done + 1e-9);

  const main = useRef<HTMLButtonElement>(null);
  useEffect(() => main.current?.focus(), []);

  const onKeyDown = useEffectEvent((event: KeyboardEvent): void => {
    const { target } = event;
    if (event.key === ' ' && !(target instanceof HTMLButtonElement)) {
      event.preventDefault();
      if (playing) stop();
      else start();
    } else if (!(target instanceof HTMLInputElement)) {
      const to = { ArrowRight: whole + 1, ArrowLeft: Math.ceil(done) - 1, Home: 0, End: last }[event.key];
      if (to === undefined) return;
      event.preventDefault();
      goTo(to);
    }
  });
  useEffect(() => {
    const heard = (event: KeyboardEvent): void => onKeyDown(event);
    document.addEventListener('keydown', heard);
    return () => document.removeEventListener('keydown', heard);
  }, []);

  return (
    <Dialog title={`${pattern.block.name}, sewn`} className="watch" close={close}>
      <div className="watch-body">
        <Picture play={play} done={done} colors={colors} />
        <p className="watch-says" role="status">
          <Says pattern={pattern} moments={play.moments} done={whole} />
        </p>
        <div className="watch-acts">
          <button type="button" className="plain" onClick={() => goTo(0)} disabled={done === 0}>
            Cut pieces
          </button>
          <button type="button" className="plain" onClick={() => goTo(Math.ceil(done) - 1)} disabled={done === 0}>
            Unpick one
          </button>
          <button type="button" className="main-act" ref={main} onClick={playing ? stop : start}>
            {playing ? 'Pause' : done >= last ? 'Sew again' : 'Sew'}
          </button>
          <button type="button" className="plain" onClick={() => goTo(whole + 1)} disabled={done >= last}>
            Sew one
          </button>
          <button type="button" className="plain" onClick={() => goTo(last)} disabled={done >= last}>
            Whole block
          </button>
        </div>
        <label className="watch-slide">
          <span>Seam</span>
          <input
            type="range"
            min={0}
            max={last}
            step={1}
            value={whole}
            aria-valuetext={`${whole === 0 ? 0 : play.moments[whole - 1]!.sewn} of ${pattern.figures.seams} seams sewn`}
            onChange={(event) => goTo(Number(event.target.value))}
          />
        </label>
        <label className="watch-slide">
          <span>Speed</span>
          <input
            type="range"
            min={Math.log2(SPEEDS.slowest)}
            max={Math.log2(SPEEDS.fastest)}
            step={0.5}
            value={Math.log2(speed)}
            aria-valuetext={`${speed < 1 ? `a seam in ${+(1 / speed).toFixed(1)} seconds` : `${+speed.toFixed(1)} seams in a second`}`}
            onChange={(event) => setSpeed(2 ** Number(event.target.value))}
          />
        </label>
      </div>
    </Dialog>
  );
}

function Says({ pattern, moments, done }: { readonly pattern: Pattern; readonly moments: readonly Moment[]; readonly done: number }): ReactNode {
  const { pieces, seams } = pattern.figures;
  if (done === 0) return `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}, cut and laid out.`;
  if (done === moments.length) {
    return (
      <>
        {seams} {seams === 1 ? 'seam' : 'seams'}, all straight: <Area size={pattern.block.unfinished} unit={pattern.block.unit} />
        {pattern.proof.holds ? ', equal to the drawing.' : '.'}
      </>
    );
  }
  const { step, seam, seams: ofStep, sewn } = moments[done - 1]!;
  const what = step.makes === 'block' ? 'the block' : `unit ${step.makes}`;
  const alike = step.makes === 'block' ? 1 : step.count / pattern.choices.blocks;
  return `Step ${step.number}: ${what}${alike > 1 ? `, ${alike} alike` : ''}, seam ${seam} of ${ofStep}. ${sewn} of ${seams} seams sewn.`;
}

const ROOM = 0.02;

function Picture({ play: { at, frame }, done, colors }: {
  readonly play: PlayThrough;
  readonly done: number;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const room = ROOM * Math.max(frame.width, frame.height);
  return (
    <svg
      className="watch-picture"
      viewBox={`${frame.left - room} ${frame.top - room} ${frame.width + 2 * room} ${frame.height + 2 * room}`}
      aria-hidden="true"
      focusable="false"
    >
      <ClothPaths placed={at(done)} colors={colors} />
    </svg>
  );
}
