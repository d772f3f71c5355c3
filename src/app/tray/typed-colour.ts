import { bad, good, type Result } from '../../measure/problem.ts';

/** @returns a colour as somebody types it, in any way that CSS knows ("teal", "#2f5d62", "oklch(60% 0.1 200)"), as #rrggbb */
export function typedColour(text: string): Result<string> {
  const typed = text.trim();
  const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  if (!pen || typed === '' || !CSS.supports('color', typed) || /^(inherit|initial|unset|revert(-layer)?|currentcolor)$/i.test(typed)) {
    return bad('not-a-color', `“${typed.slice(0, 40)}” is no colour: write a name like teal, a number like #2f5d62, or any other colour of CSS.`);
  }
  pen.fillStyle = typed;
  pen.fillRect(0, 0, 1, 1);
  const [red, green, blue, cover] = pen.getImageData(0, 0, 1, 1).data as unknown as [number, number, number, number];
  if (cover < 255) return bad('see-through', `“${typed.slice(0, 40)}” is see-through, and cloth is not: write a colour that covers.`);
  return good(`#${[red, green, blue].map((part) => part.toString(16).padStart(2, '0')).join('')}`);
}
