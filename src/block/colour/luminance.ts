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
