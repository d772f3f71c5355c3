import { PinOff, Shuffle } from 'lucide-react';
import { useEffect, useState, type ReactNode } from 'react';
import type { Fabric, LengthUnit } from '../../block/block.ts';
import { spreadBy } from '../../block/fabrics.ts';
import { holdPrint } from '../../block/held-prints.ts';
import { good } from '../../measure/problem.ts';
import type { Cut } from '../../cutting/cut.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { eachWords, type ScrapFamily } from '../../pattern/scraps.ts';
import { printLength } from '../../measure/lengths.ts';
import { several } from '../../measure/words.ts';
import { familiesOf, otherSeed } from '../scraps/spreading.ts';
import type { Acts } from '../table.ts';
import { Prose } from './Length.tsx';
import '../face/scraps.css';
import { SpreadPicture } from './SpreadPicture.tsx';

/** A family of scraps below its lines of the cutting list: how many of each print, which piece is of which, and another spread. */
export default function Scraps({ fabric, pattern, change }: {
  readonly fabric: Fabric;
  readonly pattern: Pattern;
  readonly change: Acts['change'];
}): ReactNode {
  const family = useFamily(pattern, fabric.id);
  const [only, setOnly] = useState(false);
  const again = (): void => {
    void otherSeed(pattern, fabric.id).then(
      (seed) => {
        setOnly(seed === null);
        if (seed !== null) change(`spread ${fabric.name} otherwise`, (now) => spreadBy(now, fabric.id, seed));
      },
      () => undefined,
    );
  };
  const held = pattern.heldPrints.filter(({ patch }) => pattern.pieces.some((piece) => piece.fabric === fabric.id && piece.patches.includes(patch)));
  const hold = (patches: readonly number[], print: number | null): void =>
    change(
      print === null ? `let ${several(patches.length, 'print')} of ${fabric.name} go` : `held print ${print} of ${fabric.name}`,
      (now) => good(holdPrint(now, fabric.id, patches, print)),
    );
  return (
    <div className="scraps" aria-busy={family === null}>
      {family && (
        <>
          <SpreadPicture family={family} pattern={pattern} hold={hold} />
          <div className="scraps-words">
            <ul className="prints">
              {family.cuts.map(({ cut, each }) => (
                <li key={cut.id}>
                  <Prose text={`${cutWords(cut, pattern.block.unit)}: ${eachWords(each)}`} />
                </li>
              ))}
            </ul>
            {family.says.map((sentence) => (
              <p key={sentence} className="quiet">
                <Prose text={sentence} />
              </p>
            ))}
            <p className="quiet">Press a piece in the picture, and it keeps its print while the others are spread; press again to let it go.</p>
          </div>
        </>
      )}
      <p className="cloth-acts">
        <button type="button" className="plain" onClick={again}>
          <Shuffle size={18} aria-hidden="true" /> Another spread<span className="unseen"> of {fabric.name}</span>
        </button>
        {held.length > 0 && (
          <button type="button" className="plain" onClick={() => hold(held.map(({ patch }) => patch), null)}>
            <PinOff size={18} aria-hidden="true" /> Let {several(held.length, 'held print')} go<span className="unseen"> of {fabric.name}</span>
          </button>
        )}
        <span className="quiet" role="status">
          {only ? 'There is no other spread.' : ''}
        </span>
      </p>
    </div>
  );
}

/** @returns the family's spread in a pattern; while it is worked out the last one there was, null before there was one */
function useFamily(pattern: Pattern, fabric: string): ScrapFamily | null {
  const [family, setFamily] = useState<ScrapFamily | null>(null);
  useEffect(() => {
    let asked = true;
    void familiesOf(pattern).then((families) => asked && setFamily(families.find((each) => each.fabric.id === fabric) ?? null), () => undefined);
    return () => void (asked = false);
  }, [pattern, fabric]);
  return family;
}

/** @returns "16 squares 2 1/2 in.", "1 rectangle 3 1/2 × 6 1/2 in." */
function cutWords({ quantity, shape, width, height }: Cut, unit: LengthUnit): string {
  const size = shape === 'square' ? printLength(width, unit) : `${printLength(width, unit, 'bare')} × ${printLength(height, unit)}`;
  return `${several(quantity, shape === 'template' ? 'piece' : shape)} ${size}`;
}
