import { luminance } from './luminance.ts';

/** @returns how light a colour looks, 0 for black to 100 for white: CIE 1976 L*, ISO/CIE 11664-4 */
export function lightness(color: string): number {
  const y = luminance(color);
  return y > (6 / 29) ** 3 ? 116 * Math.cbrt(y) - 16 : (29 / 3) ** 3 * y;
}

/** @returns how much two colours stand out from each other, 1 to 21: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio" */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** What quilters call how light a fabric is. */
export type Value = 'light' | 'medium' | 'dark';

/** @returns the value of a fabric's colour: thirds of L* (common practice names three values; where one ends is a matter of taste) */
export function valueOf(color: string): Value {
  const l = lightness(color);
  return l >= 200 / 3 ? 'light' : l >= 100 / 3 ? 'medium' : 'dark';
}
