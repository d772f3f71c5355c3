import { luminance } from '../block/colour/luminance.ts';
import type { Fabric } from '../block/block.ts';

/** @returns the grey, "#rrggbb", that has a colour's luminance: the inverse of sRGB's transfer, IEC 61966-2-1 */
export function greyOf(color: string): string {
  const light = luminance(color);
  const share = light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
  return `#${Math.round(share * 255).toString(16).padStart(2, '0').repeat(3)}`;
}

/** @returns the fabrics, each in the grey of its value */
export const inGreys = (fabrics: readonly Fabric[]): readonly Fabric[] => fabrics.map((fabric) => ({ ...fabric, color: greyOf(fabric.color) }));
