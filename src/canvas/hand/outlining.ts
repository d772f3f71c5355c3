import { addCorner, snapToHalfGrid, stepOnHalfGrid, strokeAlong, type GridOutline, type GridPoint } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Outline: corner after corner on the half grid, closed at its first one or by Enter. */
export function outlining({ cells, at, fabric, deeds, by }: Grip): Use {
  let corners: GridOutline = [];

  const next = (): GridPoint => snapToHalfGrid(cells(), at());
  const lay = (): void => {
    if (corners.length < 3) {
      deeds.say('An outline needs at least three corners.');
      return;
    }
    const stroke = strokeAlong(cells(), corners);
    corners = [];
    deeds.lay([stroke], fabric());
  };
  const set = (): void => {
    const corner = next();
    const first = corners[0];
    if (first && corners.length > 2 && first[0] === corner[0] && first[1] === corner[1]) {
      lay();
      return;
    }
    corners = addCorner(corners, corner);
    deeds.say(`Corner ${corners.length}: ${corner[0]} across, ${corner[1]} down.`);
  };

  return {
    ...AT_ONCE,
    reaches: true,
    marks: () => ({ corners, next: by() === null ? null : next() }),
    busy: () => corners.length > 0,
    press: set,
    use: set,
    close: () => (corners.length > 0 ? lay() : set()),
    back: () => {
      if (corners.length === 0) return false;
      corners = corners.slice(0, -1);
      deeds.say(`${corners.length} ${corners.length === 1 ? 'corner' : 'corners'} left.`);
      return true;
    },
    walk: (dx, dy) => stepOnHalfGrid(cells(), next(), dx, dy),
    drop: () => {
      const begun = corners.length > 0;
      corners = [];
      return begun;
    },
  };
}
