/** What of a TrueType file says how wide its letters are. */
export interface FaceMetrics {
  /** Advance of a character in em, null where the face does not have it. */
  readonly advance: (character: number) => number | null;
}

/**
 * Reads the tables `head`, `hhea`, `hmtx` and `cmap` (its Unicode subtables of format 4 and 12) of a TrueType or OpenType file: ISO/IEC
 * 14496-22, Open Font Format.
 * @throws RangeError where the file is none
 */
export function faceMetrics(file: Uint8Array): FaceMetrics {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const tables = new Map<string, number>();
  for (let i = 0, at = 12; i < view.getUint16(4); i++, at += 16) {
    tables.set(String.fromCharCode(...file.subarray(at, at + 4)), view.getUint32(at + 8));
  }
  const table = (name: string): number => {
    const at = tables.get(name);
    if (at === undefined) throw new RangeError(`a face without the table ${name}`);
    return at;
  };
  const em = view.getUint16(table('head') + 18);
  const longMetrics = view.getUint16(table('hhea') + 34);
  const glyphOf = glyphsOf(view, table('cmap'));
  return {
    advance: (character) => {
      const glyph = glyphOf(character);
      return glyph === 0 ? null : view.getUint16(table('hmtx') + 4 * Math.min(glyph, longMetrics - 1)) / em;
    },
  };
}

/** The glyph of a character, 0 where there is none. */
function glyphsOf(view: DataView, cmap: number): (character: number) => number {
  const subtables = Array.from({ length: view.getUint16(cmap + 2) }, (_, i) => cmap + view.getUint32(cmap + 8 + 8 * i));
  const full = subtables.find((at) => view.getUint16(at) === 12);
  if (full !== undefined) return (character) => inGroups(view, full, character);
  const basic = subtables.find((at) => view.getUint16(at) === 4);
  if (basic === undefined) throw new RangeError('a face without a table of Unicode characters');
  return (character) => inSegments(view, basic, character);
}

function inGroups(view: DataView, at: number, character: number): number {
  let [low, high] = [0, view.getUint32(at + 12) - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const group = at + 16 + 12 * middle;
    if (character < view.getUint32(group)) high = middle - 1;
    else if (character > view.getUint32(group + 4)) low = middle + 1;
    else return view.getUint32(group + 8) + character - view.getUint32(group);
  }
  return 0;
}

function inSegments(view: DataView, at: number, character: number): number {
  const doubled = view.getUint16(at + 6);
  for (let i = 0; i < doubled; i += 2) {
    if (character > view.getUint16(at + 14 + i)) continue;
    const [start, delta, offset] = [16, 16 + doubled, 16 + 2 * doubled].map((from) => view.getUint16(at + from + doubled + i)) as [
      number,
      number,
      number,
    ];
    if (character < start) return 0;
    if (offset === 0) return (character + delta) & 0xffff;
    const glyph = view.getUint16(at + 16 + 3 * doubled + i + offset + 2 * (character - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}
