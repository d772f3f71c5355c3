import { useMemo, useRef, type ReactNode } from 'react';
import { useRoom } from '../../../canvas/use-room.ts';
import { clothTiles, leftovers, type ClothTiles } from '../../../cutting/laid.ts';
import { printLength } from '../../../measure/lengths.ts';
import { subtract, ZERO } from '../../../measure/rational.ts';
import { several } from '../../../measure/words.ts';
import type { Cloth, Pattern } from '../../../pattern/pattern.ts';
import { Prose } from '../Length.tsx';
import { ClothPicture } from './ClothPicture.tsx';
import { clothWords, leftoverWords, pictureWords } from './cloth-words.ts';
import { CuttingOrder } from './CuttingOrder.tsx';

/** How one fabric is cut: every cloth as a picture to scale, and its cuts in words; what is left over. */
export function Layouts({ cloth, pattern }: { readonly cloth: Cloth; readonly pattern: Pattern }): ReactNode {
  const { unit } = pattern.block;
  const tiles = useMemo(() => {
    const spare = cloth.bought && subtract(subtract(cloth.bought, pattern.choices.squaringUp), cloth.length);
    return clothTiles(cloth.layout.cloths, pattern.cuts, spare ?? ZERO);
  }, [cloth, pattern]);
  const left = useMemo(() => leftoverWords(leftovers(tiles), unit), [tiles, unit]);
  return (
    <div className="layouts">
      {tiles.map((each, i) => (
        <Layout key={i} tiles={each} color={cloth.fabric.color} pattern={pattern} named={tiles.length > 1 || each.source.form !== 'by length'} />
      ))}
      {cloth.fabric.directional && <p>No piece is turned: the print runs along the cloth, from the top of each picture down.</p>}
      {cloth.joined.map(({ cut, count, widths, length }, i) => (
        <p key={i}>
          <Prose text={joinedWords(cut, count, widths, printLength(length, unit))} />
        </p>
      ))}
      {left !== null && (
        <p className="left">
          <span className="word">Left over</span> <Prose text={left} />
        </p>
      )}
    </div>
  );
}

/** @returns how pieces are cut that no cloth is wide enough for */
const joinedWords = (cut: string, count: number, widths: number, length: string): string =>
  `Line ${cut}: ${several(count, 'piece')}, ${count === 1 ? 'cut' : 'each cut'} from ${widths} widths of cloth, ${length} long, sewn together first; not drawn here.`;

function Layout({ tiles, color, pattern, named }: {
  readonly tiles: ClothTiles;
  readonly color: string;
  readonly pattern: Pattern;
  /** Whether it must be said which cloth it is. */
  readonly named: boolean;
}): ReactNode {
  const place = useRef<HTMLDivElement>(null);
  const room = useRoom(place);
  const cuts = useMemo(() => new Map(pattern.cuts.map((cut) => [cut.id, cut])), [pattern.cuts]);
  const { unit } = pattern.block;
  return (
    <figure className="layout">
      {named && (
        <figcaption>
          <Prose text={clothWords(tiles, unit)} />
        </figcaption>
      )}
      <div ref={place} className="layout-picture">
        {room.width > 0 && <ClothPicture tiles={tiles} unit={unit} color={color} room={room} says={pictureWords(tiles, unit)} />}
      </div>
      <CuttingOrder tiles={tiles} cuts={cuts} unit={unit} />
    </figure>
  );
}
