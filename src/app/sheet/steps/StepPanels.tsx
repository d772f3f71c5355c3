import { useMemo, type CSSProperties, type ReactNode } from 'react';
import { chord, type Mark, type Panel } from '../../../pattern/diagrams/diagram.ts';
import { stepPanels } from '../../../pattern/diagrams/step-panels.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import type { Spot } from '../../../pattern/polygons.ts';
import type { Step } from '../../../sewing/step.ts';
import { Prose } from '../Length.tsx';
import { arrowPath } from './arrow.ts';
import '../../face/steps.css';

/** With more parts than this the pictures are larger. */
const MANY = 9;

/** The pictures of one step side by side, all to one scale, each with what is done in it. */
export default function StepPanels({ step, pattern, colors }: {
  readonly step: Step;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const panels = useMemo(() => stepPanels({ step, pattern }), [step, pattern]);
  const largest = Math.max(...panels.flatMap(({ frame }) => [frame.width, frame.height]));
  return (
    <span className="panels" data-many={step.parts.length > MANY || undefined}>
      {panels.map((panel, i) => (
        <span key={i} className="panel" style={{ '--share': panel.frame.width / largest } as CSSProperties}>
          <PanelPicture panel={panel} largest={largest} colors={colors} />
          <span className="panel-says">
            {panel.says}
            {panel.measures !== undefined && (
              <span className="panel-measures">
                <Prose text={panel.measures} />
              </span>
            )}
          </span>
        </span>
      ))}
    </span>
  );
}

/** What is drawn as one path, so that a block of thousands of pieces stays a handful of elements. */
const shapeOf = (outline: readonly Spot[]): string => `M${outline.map(at).join('L')}Z`;
const at = ([x, y]: Spot): string => `${+x.toFixed(4)} ${+y.toFixed(4)}`;
const lineOf = ({ from, to }: { readonly from: Spot; readonly to: Spot }): string => `M${at(from)}L${at(to)}`;

export function PanelPicture({ panel: { marks, frame }, largest, colors }: {
  readonly panel: Panel;
  /** Longest side of the step's pictures: what must not grow with them is a share of it. */
  readonly largest: number;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const room = largest * 0.02;
  return (
    <svg
      className="panel-picture"
      viewBox={`${frame.left - room} ${frame.top - room} ${frame.width + 2 * room} ${frame.height + 2 * room}`}
      aria-hidden="true"
      focusable="false"
    >
      {layersOf(marks).map((layer, i) => (
        <Layer key={i} layer={layer} largest={largest} colors={colors} />
      ))}
    </svg>
  );
}

/** @returns marks that follow one another and look alike, together */
function layersOf(marks: readonly Mark[]): readonly (readonly Mark[])[] {
  const looks = (mark: Mark): string =>
    mark.mark === 'cloth' ? `${mark.side} ${mark.fabric}` : mark.mark === 'line' ? mark.line : mark.mark;
  const layers: { readonly looks: string; readonly marks: Mark[] }[] = [];
  for (const mark of marks) {
    const last = layers.at(-1);
    if (last?.looks === looks(mark)) last.marks.push(mark);
    else layers.push({ looks: looks(mark), marks: [mark] });
  }
  return layers.map((layer) => layer.marks);
}

function Layer({ layer, largest, colors }: {
  readonly layer: readonly Mark[];
  readonly largest: number;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const [first] = layer as readonly [Mark, ...Mark[]];
  switch (first.mark) {
    case 'cloth': {
      const outlines = layer.flatMap((mark) => (mark.mark === 'cloth' ? [mark.outline] : []));
      const color = colors.get(first.fabric);
      return (
        <>
          <path className="picture-piece panel-cloth" data-side={first.side} d={outlines.map(shapeOf).join('')} style={{ '--cloth': color } as CSSProperties} />
          {first.side === 'wrong' && <path className="panel-weave" d={outlines.map((outline) => weaveOf(outline, largest)).join('')} />}
        </>
      );
    }
    case 'line': {
      const lines = layer.flatMap((mark) => (mark.mark === 'line' ? [lineOf(mark)] : []));
      return <path className="panel-line" data-line-is={first.line} d={lines.join('')} />;
    }
    case 'pressed':
    case 'pressed open': {
      const arrows = layer.flatMap((mark) => (mark.mark === 'pressed' || mark.mark === 'pressed open' ? [arrowPath(mark, mark.mark === 'pressed open')] : []));
      return ['halo', 'ink'].map((look) => <path key={look} className={`panel-arrow ${look}`} d={arrows.join('')} />);
    }
    case 'name':
      return layer.map((mark, i) => mark.mark === 'name' && <Name key={i} name={mark} largest={largest} />);
    case 'order':
      return layer.map((mark, i) => mark.mark === 'order' && <Order key={i} order={mark} largest={largest} />);
  }
}

/** How far apart the threads are drawn on the wrong side of cloth, as a share of the picture. */
const THREADS = 0.045;
const SLANT: Spot = [Math.cos(1.2), Math.sin(1.2)];

/** @returns slanting lines all over an outline: the wrong side is not told by its paler colour alone */
function weaveOf(outline: readonly Spot[], largest: number): string {
  const across: Spot = [-SLANT[1], SLANT[0]];
  const places = outline.map(([x, y]) => x * across[0] + y * across[1]);
  const [low, high, gap] = [Math.min(...places), Math.max(...places), largest * THREADS];
  const lines: string[] = [];
  for (let place = Math.ceil(low / gap) * gap; place < high; place += gap) {
    const ends = chord(outline, [across[0] * place, across[1] * place], SLANT);
    if (ends) lines.push(lineOf({ from: ends[0], to: ends[1] }));
  }
  return lines.join('');
}

function Name({ name: { text, at: [x, y], turn, room }, largest }: {
  readonly name: Extract<Mark, { readonly mark: 'name' }>;
  readonly largest: number;
}): ReactNode {
  const size = Math.min((room * 0.8) / Math.max(1, text.length * 0.7), largest * 0.11);
  return (
    <text className="panel-name" x={x} y={y} fontSize={size} strokeWidth={size * 0.22} transform={turn === 0 ? undefined : `rotate(${turn * 90} ${x} ${y})`}>
      {text}
    </text>
  );
}

function Order({ order: { number, at: [x, y], room = Infinity }, largest }: {
  readonly order: Extract<Mark, { readonly mark: 'order' }>;
  readonly largest: number;
}): ReactNode {
  const radius = Math.min(largest * 0.045, room / 2);
  return (
    <g className="panel-order">
      <circle cx={x} cy={y} r={radius} />
      <text x={x} y={y} fontSize={radius * 1.35}>
        {number}
      </text>
    </g>
  );
}
