import { Image, Layers, Minus, Plus, Ruler, Square } from 'lucide-react';
import { lazy, Suspense, useEffect, useRef, useState, useSyncExternalStore, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { toNumber } from '../../measure/rational.ts';
import type { Glass } from '../../canvas/glass.ts';
import { useStore } from '../store.ts';
import { Flap } from './Flap.tsx';
import { shown } from './shown.ts';
import { isMeasured, pixelsPer } from './true-size.ts';
import { underlay } from './underlay.ts';

const OnTheCloth = lazy(() => import('./OnTheCloth.tsx'));
const UnderTheCloth = lazy(() => import('./UnderTheCloth.tsx'));
const MeasureScreen = lazy(() => import('./MeasureScreen.tsx'));

/** How much nearer one press brings the drawing. */
const STEP = 1.5;

/** The row under the table: how near the drawing is, what is drawn on the cloth, and what lies under it. */
export function ViewRow({ block, glass }: { readonly block: Block; readonly glass: Glass }): ReactNode {
  const { look, fit } = useSyncExternalStore(glass.subscribe, glass.seen);
  const [open, setOpen] = useState<'measure' | 'on' | 'under' | null>(null);
  const flap = (name: NonNullable<typeof open>) => (next: boolean) => setOpen(next ? name : null);
  const some = useStore(shown, ({ grid, ...rest }) => Object.values(rest).some(Boolean));
  const traced = useStore(underlay, ({ laid }) => laid !== null && laid.shown);
  const laying = useStore(underlay, (now) => now.laying);
  const row = useRef<HTMLDivElement>(null);
  const laid = useRef(laying);
  // While a picture is moved by hand nothing lies over it; afterwards whoever works by keys is back where that began.
  useEffect(() => {
    if (laying) setOpen(null);
    else if (laid.current && document.activeElement === document.body) row.current?.querySelector<HTMLElement>('.flap-under > button')?.focus();
    laid.current = laying;
  }, [laying]);
  const { width, unit } = block.finished;
  const pixels = pixelsPer(unit);
  const isTrue = fit !== null && Math.abs(toNumber(width) * pixels - fit.width * look.zoom) < 0.5;

  const enlarge = (): void => {
    glass.enlarge(block, pixelsPer(unit));
    if (isTrue || !isMeasured()) setOpen(open === 'measure' ? null : 'measure');
  };

  return (
    <div ref={row} className="view-row" role="group" aria-label="How the drawing is seen">
      <div className="view-zoom">
        <button type="button" className="plain view-act" aria-label="Farther" title="Farther (−)" disabled={look.zoom <= 1} onClick={() => glass.nearer(1 / STEP)}>
          <Minus size={18} aria-hidden="true" />
        </button>
        <output className="view-times" aria-label="Size on the table">
          {Math.round(look.zoom * 100)} %
        </output>
        <button type="button" className="plain view-act" aria-label="Nearer" title="Nearer (+)" onClick={() => glass.nearer(STEP)}>
          <Plus size={18} aria-hidden="true" />
        </button>
      </div>
      <button type="button" className="plain view-act" disabled={look.zoom === 1} title="Whole block (0)" onClick={glass.whole}>
        <Square size={17} aria-hidden="true" /> <span className="view-words">Whole block</span>
      </button>
      <Flap
        name="measure"
        icon={<Ruler size={18} aria-hidden="true" />}
        words="True size"
        hint={isTrue ? 'Press again to measure this screen' : 'As large as it will be sewn'}
        pressed={isTrue}
        open={open === 'measure'}
        setOpen={(next) => (next || open !== 'measure' ? enlarge() : setOpen(null))}
      >
        <Suspense fallback={null}>
          <MeasureScreen
            unit={unit}
            done={() => {
              setOpen(null);
              glass.enlarge(block, pixelsPer(unit));
            }}
          />
        </Suspense>
      </Flap>
      <Flap name="on" icon={<Layers size={18} aria-hidden="true" />} words="On the cloth" pressed={some} open={open === 'on'} setOpen={flap('on')}>
        <Suspense fallback={null}>
          <OnTheCloth />
        </Suspense>
      </Flap>
      <Flap name="under" icon={<Image size={18} aria-hidden="true" />} words="Under the cloth" pressed={traced} open={open === 'under'} setOpen={flap('under')}>
        <Suspense fallback={null}>
          <UnderTheCloth block={block} />
        </Suspense>
      </Flap>
    </div>
  );
}
