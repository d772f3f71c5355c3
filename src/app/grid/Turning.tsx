import { CaretsToAxisDashedHorizontal, CaretsToAxisDashedVertical, RotateCcw, RotateCw, type LucideIcon } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { mirror, turn } from '../../block/turning.ts';
import { good } from '../../measure/problem.ts';
import type { Doing } from './doing.ts';

const TURNS: readonly (readonly [string, LucideIcon, (block: Block) => Block])[] = [
  ['Turn left', RotateCcw, (block) => turn(block, 'left')],
  ['Turn right', RotateCw, (block) => turn(block)],
  ['Mirror left and right', CaretsToAxisDashedVertical, (block) => mirror(block, 'left and right')],
  ['Mirror top and bottom', CaretsToAxisDashedHorizontal, (block) => mirror(block, 'top and bottom')],
];

/** Turns or mirrors the whole block: picture, lines, seams and pins. */
export function Turning({ doing }: { readonly doing: Doing }): ReactNode {
  return (
    <div className="grid-part">
      <h3>The whole block</h3>
      <div className="grid-row">
        {TURNS.map(([words, Sign, verb]) => (
          <button
            key={words}
            type="button"
            className="plain framed"
            onClick={() => doing.change('turning', words.toLowerCase(), (now) => good(verb(now)))}
          >
            <Sign size={18} aria-hidden="true" /> {words}
          </button>
        ))}
      </div>
    </div>
  );
}
