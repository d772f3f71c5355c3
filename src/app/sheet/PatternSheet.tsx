import { lazy, memo, Suspense, useDeferredValue, useMemo, type ReactNode } from 'react';
import type { Block, Grid } from '../../block/block.ts';
import type { Choices } from '../../block/choices.ts';
import type { Problem } from '../../measure/problem.ts';
import { ABOUT_CUTTING } from '../../pattern/cautions.ts';
import type { Alternative, Pattern } from '../../pattern/pattern.ts';
import { Later } from '../Later.tsx';
import type { ClothState } from '../cloths.ts';
import type { Standing } from '../pattern-maker.ts';
import { drawingAlone } from '../drawing-alone.ts';
import type { Acts } from '../table.ts';
import { ChoicesLine } from './ChoicesLine.tsx';
import { Cutting } from './Cutting.tsx';
import { Divisions } from './Divisions.tsx';
import { Area } from './Length.tsx';
import { Cautions, Notes } from './Notes.tsx';
import type { Wished } from './pressing/wishes.ts';
import { ProofLine } from './Proof.tsx';
import { PublishButton } from './PublishButton.tsx';
import { SizesButton } from './SizesButton.tsx';
import { StandingLine } from './StandingLine.tsx';
import { Steps } from './Steps.tsx';
import { TimeLine } from './TimeLine.tsx';
import { Units } from './Units.tsx';
import { figuresLine, Ways } from './Ways.tsx';

const Pins = lazy(() => import('./Pins.tsx'));
const Knot = lazy(() => import('./Knot.tsx').then(({ Knot: part }) => ({ default: part })));

/** The live pattern beside the drawing. While a newer one is being worked out the last one stays, greyed. */
export function PatternSheet({ block, drawn, pattern, ways, standing, problem, working, clothStates, letters, acts }: {
  readonly block: Block;
  /** The drawing that pattern or problem are about. */
  readonly drawn: Block | null;
  readonly pattern: Pattern | null;
  /** Every way to sew it; null while they are looked for. */
  readonly ways: readonly Alternative[] | null;
  /** How the search for that pattern stands. */
  readonly standing: Standing | null;
  /** Why this drawing has no pattern. */
  readonly problem: Problem | null;
  readonly working: boolean;
  /** How the layout of each fabric stands, by its id. */
  readonly clothStates: ReadonlyMap<string, ClothState>;
  readonly letters: ReadonlyMap<string, string>;
  readonly acts: Pick<Acts, 'choose' | 'unpin' | 'mend' | 'alarm' | 'change' | 'undo' | 'redo'>;
}): ReactNode {
  const { pressedSeams, grid, denominator } = block;
  const made = useMemo(() => ({ ...(pressedSeams && { pressedSeams }), grid, denominator }), [pressedSeams, grid, denominator]);
  // A long sheet is written when the hand leaves time for it.
  const written = useDeferredValue(pattern);
  const writtenWays = useDeferredValue(ways);
  // So are its pictures in other colours: first the cloth on the table is seen in them.
  const fabrics = useDeferredValue(block.fabrics);
  const colors = useMemo(() => new Map(fabrics.map(({ id, color }) => [id, color])), [fabrics]);
  const writtenLetters = useDeferredValue(letters);
  const late = working || written !== pattern;
  return (
    <article className="sheet" aria-labelledby="sheet-title" aria-busy={late} data-working={late || undefined}>
      <header className="sheet-head">
        <p className="sheet-kicker">
          Pattern sheet{' '}
          <span className="working" role="status">
            {late ? 'working it out …' : ''}
          </span>
        </p>
        <div className="sheet-title">
          <h2 id="sheet-title">{block.name}</h2>
          {block.patches.length > 0 && <PublishButton block={block} pattern={pattern} working={working} problem={problem} clothStates={clothStates} acts={acts} />}
        </div>
        {written && (
          <p className="sheet-size">
            <span>
              <Area size={written.block.finished} unit={written.block.unit} /> finished
            </span>
            <span>
              <Area size={written.block.unfinished} unit={written.block.unit} /> unfinished
            </span>
            {block.patches.length > 0 && <SizesButton pattern={written} acts={acts} />}
          </p>
        )}
      </header>
      {problem && (!problem.patches || !drawn) && (
        <p className="sheet-problem" role="alert">
          {problem.sentence}
        </p>
      )}
      {problem?.patches && drawn && (
        <Later failed={() => acts.alarm(problem.sentence)}>
          <Knot block={drawn} problem={problem} mend={(remedy) => drawn === drawingAlone(block) && acts.mend(remedy)} />
        </Later>
      )}
      {block.pins && (
        <Suspense fallback={null}>
          <Pins block={block} refused={drawn?.pins === block.pins && written ? written.refusedPins : []} unpin={acts.unpin} />
        </Suspense>
      )}
      {block.patches.length === 0 && (
        <p className="sheet-invites">
          Nothing is painted yet. Take up a shape and a fabric and lay the first patch: units, cutting list and sewing order
          write themselves here.
        </p>
      )}
      {written && block.patches.length > 0 && (
        <SheetBody drawn={drawn} pattern={written} ways={writtenWays} standing={standing} choices={block.choices} grid={(drawn ?? block).grid} made={made} colors={colors} clothStates={clothStates} letters={writtenLetters} acts={acts} />
      )}
    </article>
  );
}

const SheetBody = memo(function SheetBody({ drawn, pattern, ways, standing, choices, grid, made, colors, clothStates, letters, acts }: {
  /** The drawing that the pattern is of. */
  readonly drawn: Block | null;
  readonly pattern: Pattern;
  readonly ways: readonly Alternative[] | null;
  readonly standing: Standing | null;
  /** What is chosen now, which the pattern may not know yet. */
  readonly choices: Choices | undefined;
  readonly grid: Grid;
  readonly made: Wished;
  readonly colors: ReadonlyMap<string, string>;
  readonly clothStates: ReadonlyMap<string, ClothState>;
  readonly letters: ReadonlyMap<string, string>;
  readonly acts: Pick<Acts, 'choose' | 'alarm' | 'change'>;
}): ReactNode {
  return (
    <div className="sheet-body">
      <ProofLine pattern={pattern} colors={colors} alarm={acts.alarm} />
      <p className="figures">{figuresLine(pattern.figures)}</p>
      <TimeLine pattern={pattern} alarm={acts.alarm} />
      <StandingLine standing={standing} />
      <ChoicesLine choices={{ ...pattern.choices, ...choices }} unit={pattern.block.unit} choose={acts.choose} />
      <Ways pattern={pattern} ways={ways} chosen={choices?.way ?? pattern.way} chooseWay={(way) => acts.choose({ way })} />
      <Units pattern={pattern} grid={grid} colors={colors} change={acts.change} />
      <Notes pattern={pattern} />
      <Cutting pattern={pattern} choices={{ ...pattern.choices, ...choices }} states={clothStates} letters={letters} acts={acts} />
      <Steps drawn={drawn} assembly={choices?.assembly ?? pattern.choices.assembly} made={made} pattern={pattern} colors={colors} acts={acts} />
      {pattern.divisions.length > 0 && <Divisions pattern={pattern} />}
      <Cautions said={pattern.cautions.slice(ABOUT_CUTTING)} title="Take care when sewing" />
    </div>
  );
});
