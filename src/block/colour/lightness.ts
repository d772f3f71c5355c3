/** @returns a channel of an sRGB colour, 0 to 255, as the share of light it stands for */
function linear(channel: number): number {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

/**
 * @param color "#rrggbb" or "#rgb"
 * @returns its relative luminance, 0 for black to 1 for white: W3C, Web Content Accessibility Guidelines 2.2, "relative luminance",
 * with the threshold of sRGB as its note of May 2021 has it; 1 for what is no such colour
 */
export function luminance(color: string): number {
  const [, digits] = /^#([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(color) ?? [];
  if (digits === undefined) return 1;
  const parts = digits.length === 3 ? [...digits].map((digit) => digit + digit) : [digits.slice(0, 2), digits.slice(2, 4), digits.slice(4)];
  const [red, green, blue] = parts.map((part) => linear(Number.parseInt(part, 16))) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

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
