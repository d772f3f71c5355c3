import type { Block, Colourway, Fabric, PressedSeam, UnitMethod } from './block.ts';
import { boxName, checkFabricKnown, checkOutline, checkPin, checkSeam, checkText, type Checked, type Ground } from './checks.ts';
import { checkPressedSeam, checkUnitMethod, seamName } from './file-checks.ts';
import { checkChoices } from './choice-checks.ts';
import type { Choices } from './choices.ts';
import { clothPlace } from './cloth-checks.ts';
import { pressedTwice, unitTwice } from './choice-problems.ts';
import { toDrawing } from './drawing.ts';
import { checkPhotos } from './colour/photos.ts';
import { colourwayTwice, tooManyColourways } from './colour/problems.ts';
import { checkFabrics, checkGround } from './fabric-checks.ts';
import { MAX_COLOURWAYS, MAX_PATCHES, MAX_PINS, MAX_PRESSED_SEAMS, MAX_SEAMS, MAX_UNIT_METHODS } from './limits.ts';
import * as say from './problems.ts';
import { checkPublication } from './publication-checks.ts';

function checkUnitMethods(units: readonly UnitMethod[], ground: Ground): Checked {
  if (units.length > MAX_UNIT_METHODS) return say.tooManyUnitMethods(units.length);
  const numbers = new Map<string, number>();
  for (const [i, unit] of units.entries()) {
    const fault = checkUnitMethod(`Unit method ${i + 1}`, unit, ground);
    if (fault) return fault;
    const before = numbers.get(boxName(unit));
    if (before !== undefined) return unitTwice(before, i + 1);
    numbers.set(boxName(unit), i + 1);
  }
  return null;
}

function checkPressedSeams(seams: readonly PressedSeam[], ground: Ground): Checked {
  if (seams.length > MAX_PRESSED_SEAMS) return say.tooManyPressedSeams(seams.length);
  const numbers = new Map<string, number>();
  for (const [i, seam] of seams.entries()) {
    const fault = checkPressedSeam(`Pressing ${i + 1}`, seam, ground);
    if (fault) return fault;
    const before = numbers.get(seamName(seam));
    if (before !== undefined) return pressedTwice(before, i + 1);
    numbers.set(seamName(seam), i + 1);
  }
  return null;
}

/** @returns whether cloth is chosen only for fabrics that there are */
function checkClothsKnown({ cloths = {} }: Choices, fabrics: readonly Fabric[]): Checked {
  const stranger = Object.keys(cloths).find((id) => !fabrics.some((fabric) => fabric.id === id));
  return stranger === undefined ? null : checkFabricKnown(clothPlace(stranger), stranger, fabrics);
}

function checkColourways(colourways: readonly Colourway[]): Checked {
  if (colourways.length > MAX_COLOURWAYS) return tooManyColourways(colourways.length);
  const numbers = new Map<string, number>();
  for (const [i, { name, looks }] of colourways.entries()) {
    const where = `Colourway ${i + 1}`;
    const before = numbers.get(name);
    if (before !== undefined) return colourwayTwice(before, i + 1, name);
    numbers.set(name, i + 1);
    const fabrics = Object.entries(looks).map(([id, { same: _, ...look }]): Fabric => ({ id, ...look }));
    const fault = checkText(`${where}'s name`, name) ?? checkFabrics(fabrics);
    if (fault) return { ...fault, sentence: `${where}: ${fault.sentence}` };
  }
  return null;
}

/** Checks a whole block, for blocks made from what somebody wrote. */
export function checkBlock(block: Block): Checked {
  const { finished, fabrics, patches, seams, pins = [], unitMethods = [], pressedSeams = [], choices, colourways = [], publication } = block;
  const first =
    checkGround(block) ??
    (choices ? checkChoices(choices, finished.unit) ?? checkClothsKnown(choices, fabrics) : null) ??
    checkColourways(colourways) ??
    checkPhotos(block);
  if (first) return first;
  if (patches.length > MAX_PATCHES) return say.tooManyPatches(patches.length);
  if (seams.length > MAX_SEAMS) return say.tooManySeams(seams.length);
  if (pins.length > MAX_PINS) return say.tooManyPins(pins.length);
  const ids = new Set(fabrics.map((fabric) => fabric.id));
  for (const [i, patch] of patches.entries()) {
    const where = `Patch ${i + 1}`;
    const unknown = ids.has(patch.fabric) ? null : checkFabricKnown(where, patch.fabric, fabrics);
    const fault = unknown ?? checkOutline(where, patch.points, block);
    if (fault) return fault;
  }
  for (const [i, seam] of seams.entries()) {
    const fault = checkSeam(`Seam ${i + 1}`, seam, block);
    if (fault) return fault;
  }
  for (const [i, pin] of pins.entries()) {
    const fault = checkPin(`Pin ${i + 1}`, pin, block);
    if (fault) return fault;
  }
  const fault = checkUnitMethods(unitMethods, block) ?? checkPressedSeams(pressedSeams, block) ?? (publication ? checkPublication(publication) : null);
  if (fault) return fault;
  const drawn = toDrawing(block);
  return drawn.ok ? null : drawn.problem;
}
