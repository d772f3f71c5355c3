import type { ReactNode } from 'react';
import { keepLit, lights, litLine, passOver, type LineName } from '../lights.ts';
import { useStore } from '../store.ts';

/** One line of the sheet: while the pointer is on it its patches light up in the drawing; it is marked when the drawing points at it. */
export function Line({ name, className, wide, children }: {
  readonly name: LineName;
  readonly className: string;
  /** Its picture takes a row of its own. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  const lit = useStore(lights, (now) => litLine(now) === name);
  const marked = useStore(lights, (now) => now.marked.has(name));
  return (
    <li
      className={`line ${className}`}
      data-line={name}
      data-wide={wide || undefined}
      data-lit={lit || undefined}
      data-marked={marked || undefined}
      onPointerEnter={(event) => event.pointerType !== 'touch' && passOver(name)}
      onPointerLeave={() => passOver(null)}
    >
      {children}
    </li>
  );
}

/** The part of a line that takes the focus: focusing lights the patches, pressing keeps them lit. */
export function Lamp({ name, says, className, stop = true, children }: {
  readonly name: LineName;
  /** What lights up, for those who cannot see it. */
  readonly says: string;
  readonly className?: string;
  /** Whether the Tab key stops here. */
  readonly stop?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  const kept = useStore(lights, (now) => now.kept === name);
  return (
    <button
      type="button"
      className={`lamp ${className ?? ''}`}
      aria-pressed={kept}
      aria-label={says}
      tabIndex={stop ? 0 : -1}
      onFocus={() => passOver(name)}
      onBlur={() => passOver(null)}
      onClick={() => keepLit(name)}
    >
      {children}
    </button>
  );
}
