import { lazy, Suspense, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { AssemblyOrder } from '../../geometry/piecing/order.ts';
import { toNumber } from '../../measure/rational.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Step } from '../../sewing/step.ts';
import type { Acts } from '../table.ts';
import { DialogButton } from './DialogButton.tsx';
import { InView } from './InView.tsx';
import { Area, Prose } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';
import { isWide } from './picture.ts';
import type { Wished } from './pressing/wishes.ts';

const AssemblyDialog = lazy(() => import('./assembly/AssemblyDialog.tsx'));
const ErrorDialog = lazy(() => import('./errors/ErrorDialog.tsx'));
const PressingDialog = lazy(() => import('./pressing/PressingDialog.tsx'));
const Templates = lazy(() => import('./templates/Templates.tsx'));
const StepAlso = lazy(() => import('./steps/StepAlso.tsx'));
const StepPanels = lazy(() => import('./steps/StepPanels.tsx'));

/** The word a pressing instruction begins with, so that the eye finds it. */
const PRESS = 'Press';

/** The sewing order: what to lay down, how to press it, and what it must measure then. */
export function Steps({ drawn, assembly, made, pattern, colors, acts: { alarm, change, choose } }: {
  /** The drawing that the pattern is of. */
  readonly drawn: Block | null;
  /** The order of assembly that is chosen. */
  readonly assembly: AssemblyOrder;
  readonly made: Wished;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
  readonly acts: Pick<Acts, 'alarm' | 'change' | 'choose'>;
}): ReactNode {
  if (pattern.steps.length === 0) return null;
  return (
    <section aria-labelledby="steps-title" className="part">
      <div className="cutting-head">
        <h3 id="steps-title">Sewing</h3>
        {pattern.proof.seams > 0 && (
          <>
            {drawn && (
              <DialogButton words="Order of assembly" alarm={alarm}>
                {(close) => <AssemblyDialog block={drawn} pattern={pattern} chosen={assembly} colors={colors} choose={(order) => choose({ assembly: order })} close={close} />}
              </DialogButton>
            )}
            {pattern.way === 'foundation' && (
              <DialogButton words="Print foundations" alarm={alarm}>
                {(close) => <Templates pattern={pattern} what="foundations" alarm={alarm} close={close} />}
              </DialogButton>
            )}
            <DialogButton words="Pressing" alarm={alarm}>
              {(close) => <PressingDialog made={made} pattern={pattern} colors={colors} change={change} close={close} />}
            </DialogButton>
            <DialogButton words="What a seam error costs" alarm={alarm}>
              {(close) => <ErrorDialog pattern={pattern} colors={colors} close={close} />}
            </DialogButton>
          </>
        )}
      </div>
      <ol className="steps">
        {pattern.steps.map((step) => (
          <StepRow key={step.number} step={step} pattern={pattern} colors={colors} />
        ))}
      </ol>
    </section>
  );
}

function StepRow({ step, pattern, colors }: {
  readonly step: Step;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const name = `step ${step.number}` as const;
  return (
    <Line name={name} className="step" wide={isWide({ width: toNumber(step.finished.width), height: toNumber(step.finished.height) })}>
      <p className="step-title">
        <span className="step-number">{step.number}</span>
        <span className="step-makes">{titleOf(step)}</span>
      </p>
      <Lamp name={name} says={`Step ${step.number}: show it in the drawing`} className="step-picture">
        <InView className="panels-to-come">
          {() => (
            <Suspense fallback={<span className="panels-to-come" />}>
              <StepPanels step={step} pattern={pattern} colors={colors} />
            </Suspense>
          )}
        </InView>
      </Lamp>
      <div className="step-words">
        <p className="step-text">
          <Prose text={step.how} />
        </p>
        <InView className="also-to-come">
          {() => (
            <Suspense>
              <StepAlso step={step} pattern={pattern} />
            </Suspense>
          )}
        </InView>
        {step.press !== '' && (
          <p className="press">
            {step.press.startsWith(PRESS) && <span className="word">{PRESS}</span>}
            <Prose text={step.press.startsWith(PRESS) ? step.press.slice(PRESS.length) : step.press} />
          </p>
        )}
        <p className="measure">
          <span className="word">{step.trimmed ? 'Trim to' : 'Measures'}</span>{' '}
          <strong>
            <Area size={step.unfinished} unit={pattern.block.unit} />
          </strong>
        </p>
      </div>
    </Line>
  );
}

/** @returns what a step makes, and how many */
function titleOf(step: Step): ReactNode {
  if (step.makes === 'block') return step.count === 1 ? 'The block' : `${step.count} blocks`;
  return (
    <>
      <span className="letter">{step.makes}</span> {step.kind} <span className="quiet makes">make {step.count}</span>
    </>
  );
}
