import type { CSSProperties, ReactNode } from 'react';
import type { Cut } from '../../cutting/cut.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { Area, Length } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';

const SHAPES: Readonly<Record<Cut['shape'], readonly [string, string]>> = {
  square: ['square', 'squares'],
  rectangle: ['rectangle', 'rectangles'],
  template: ['piece', 'pieces'],
};

const SUBCUTS: Readonly<Record<Cut['subcut'], string>> = {
  none: '',
  once: 'cut once on the diagonal',
  twice: 'cut twice on the diagonals',
  'head to tail': 'cut into triangles, head to tail',
};

/** @returns "for A and B", "for the block": where the pieces of a line go */
function whereTo(cut: Cut): string {
  const places = [...new Set(cut.uses.map((use) => (use.unit === 'block' ? 'the block' : use.unit)))];
  const last = places.pop();
  if (last === undefined) return '';
  return places.length === 0 ? `for ${last}` : `for ${places.join(', ')} and ${last}`;
}

/** What to cut, fabric by fabric. */
export function Cutting({ pattern, letters }: { readonly pattern: Pattern; readonly letters: ReadonlyMap<string, string> }): ReactNode {
  return (
    <section aria-labelledby="cutting-title" className="part">
      <h3 id="cutting-title">Cutting</h3>
      <div className="cloths">
        {pattern.fabrics.map(({ fabric, buy, strips }) => {
          const cuts = pattern.cuts.filter((cut) => cut.fabric === fabric.id);
          if (cuts.length === 0) return null;
          return (
            <section key={fabric.id} className="cloth" aria-labelledby={`cloth-${fabric.id}`}>
              <h4 id={`cloth-${fabric.id}`} className="cloth-name">
                <span className="chip" style={{ '--cloth': fabric.color } as CSSProperties} aria-hidden="true">
                  <span>{letters.get(fabric.id)}</span>
                </span>
                {fabric.name}
                <span className="buy">{buy}</span>
              </h4>
              <ul className="cuts">
                {cuts.map((cut) => (
                  <CutLine key={cut.id} cut={cut} pattern={pattern} fabricName={fabric.name} />
                ))}
              </ul>
              {strips.length > 0 && (
                <p className="quiet strips">
                  From {strips.map((strip, i) => (
                    <span key={i}>
                      {i > 0 && ', '}
                      {strip.count} {strip.count === 1 ? 'strip' : 'strips'} <Length value={strip.width} unit={pattern.block.unit} />
                    </span>
                  ))} wide
                </p>
              )}
            </section>
          );
        })}
      </div>
    </section>
  );
}

function CutLine({ cut, pattern, fabricName }: { readonly cut: Cut; readonly pattern: Pattern; readonly fabricName: string }): ReactNode {
  const { unit } = pattern.block;
  const [one, many] = SHAPES[cut.shape];
  const name = cut.quantity === 1 ? one : many;
  return (
    <Line name={`cut ${cut.id}`} className="cut">
      <Lamp name={`cut ${cut.id}`} says={`${cut.quantity} ${name} of ${fabricName}: show in the drawing`} className="quantity">
        {cut.quantity}
      </Lamp>
      <p className="cut-words">
        <span className="shape">{name}</span>{' '}
        <strong className="cut-size">
          {cut.shape === 'square' ? <Length value={cut.width} unit={unit} /> : <Area size={cut} unit={unit} />}
        </strong>
        {cut.shape === 'template' && <span className="sub">from a template</span>}
        {cut.subcut !== 'none' && <span className="sub">, {SUBCUTS[cut.subcut]}</span>}
        {cut.spare > 0 && <span className="quiet spare"> · {cut.spare} spare</span>}
      </p>
      <p className="for">{whereTo(cut)}</p>
    </Line>
  );
}
