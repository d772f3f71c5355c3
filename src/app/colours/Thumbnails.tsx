import { memo, useCallback, useEffect, useRef, useState, type ReactNode } from 'react';
import { drawRoles, type RoleShapes } from './role-shapes.ts';
import { useDrawn } from './use-drawn.ts';

/** One way to colour the block. */
export interface Thumbnail {
  readonly key: string;
  /** Colour of each role. */
  readonly colors: ReadonlyMap<string, string>;
  /** For whoever cannot see it. */
  readonly says: string;
}

/** How large each is, in CSS pixels. */
const SIDE = 88;
/** So many more stand there after each frame: few enough that no frame is late. */
const MORE = 40;

/** Pictures of a block in many colourings, a few more in each frame; pressing one takes it. */
export const Thumbnails = memo(function Thumbnails({ shapes, all, taken, take }: {
  readonly shapes: RoleShapes;
  readonly all: readonly Thumbnail[];
  /** The key of the one the block is in. */
  readonly taken: string | null;
  readonly take: (key: string) => void;
}): ReactNode {
  const [count, setCount] = useState(MORE);
  useEffect(() => {
    if (count >= all.length) return undefined;
    const frame = requestAnimationFrame(() => setCount(count + MORE));
    return () => cancelAnimationFrame(frame);
  }, [count, all.length]);
  return (
    <ul className="thumbnails" aria-label="Ways to colour the block, those that stand out most first">
      {all.slice(0, count).map((one) => (
        <li key={one.key}>
          <Picture shapes={shapes} one={one} taken={one.key === taken} take={take} />
        </li>
      ))}
    </ul>
  );
});

const Picture = memo(function Picture({ shapes, one, taken, take }: {
  readonly shapes: RoleShapes;
  readonly one: Thumbnail;
  readonly taken: boolean;
  readonly take: (key: string) => void;
}): ReactNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [wide, high] = [SIDE * shapes.width, SIDE * shapes.height];
  const draw = useCallback((place: HTMLCanvasElement) => drawRoles(place, shapes, (role) => one.colors.get(role) ?? '#ffffff'), [shapes, one]);
  // What is not seen is not drawn: of a thousand pictures a screen shows a few dozen.
  useDrawn(canvas, [wide, high], draw);
  return (
    <button type="button" className="thumbnail" aria-pressed={taken} aria-label={one.says} title={one.says} onClick={() => take(one.key)}>
      <canvas ref={canvas} style={{ width: wide, height: high }} />
    </button>
  );
});
