import { snapToHalfGrid, stepOnHalfGrid, strokeAlong, type GridPoint } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Seam: a line between two points of the half grid, drawn in one go or tapped at one end and then at the other. */
export function seaming({ cells, at, deeds, by }: Grip): Use {
  let start: GridPoint | null = null;
  let justBegun = false;

  const end = (): GridPoint => snapToHalfGrid(cells(), at());
  const isAt = (point: GridPoint, other: GridPoint): boolean => point[0] === other[0] && point[1] === other[1];
  const sew = (from: GridPoint, to: GridPoint): void => {
    start = null;
    deeds.divide([strokeAlong(cells(), [from, to])]);
  };
  const use = (): void => {
    const here = end();
    if (!start) {
      start = here;
      deeds.say(`The seam begins ${here[0]} across, ${here[1]} down; go to its other end and press Space.`);
    } else if (!isAt(start, here)) {
      sew(start, here);
    }
  };

  return {
    ...AT_ONCE,
    reaches: true,
    marks: () => ({ corners: start ? [start] : [], next: by() === null ? null : end() }),
    busy: () => start !== null,
    press: () => {
      justBegun = start === null;
      start ??= end();
    },
    lift: () => {
      if (!start) return;
      if (!isAt(start, end())) sew(start, end());
      // Tapped twice at one place, it is dropped.
      else if (!justBegun) start = null;
    },
    use,
    close: use,
    back: () => {
      if (!start) return false;
      start = null;
      deeds.say('Dropped.');
      return true;
    },
    walk: (dx, dy) => stepOnHalfGrid(cells(), end(), dx, dy),
    drop: () => {
      const begun = start !== null;
      start = null;
      return begun;
    },
  };
}
