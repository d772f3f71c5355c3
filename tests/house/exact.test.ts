import { describe, expect, it } from 'vitest';
import { staysExact } from './exact.ts';
import { sourcesUnder } from './source.ts';

const file = 'src/geometry/planted.ts';

describe('nothing that decides may round', () => {
  it.each([
    ['const a = 1;\nconst d = Math.hypot(3, 4);', 'src/geometry/planted.ts:2 uses Math.hypot'],
    ['Math.sqrt(2)', 'uses Math.sqrt'],
    ['Math.sin(1)', 'uses Math.sin'],
    ['Math.cos(1)', 'uses Math.cos'],
    ['Math.tan(1)', 'uses Math.tan'],
    ['Math.atan2(1, 2)', 'uses Math.atan2'],
    ['const area = Math.PI * 4', 'uses Math.PI'],
    ['Math.random()', 'uses Math.random'],
    ["Math['sqrt'](2)", 'uses Math.sqrt'],
    ['Math[`sqrt`](2)', 'uses Math.sqrt'],
    ['Math?.sqrt(2)', 'uses Math.sqrt'],
    ['globalThis.Math.sqrt(2)', 'uses Math.sqrt'],
    ["globalThis['Math'].sqrt(2)", 'uses Math.sqrt'],
    ['const { abs, sqrt } = Math', 'uses Math.sqrt'],
    ['const { sqrt: root } = Math', 'uses Math.sqrt'],
    ["const { ['hypot']: long } = Math", 'uses Math.hypot'],
    ['const { abs, ...others } = Math', 'hides what it computes'],
    ['const M = Math; M.sqrt(2)', 'hides what it computes'],
    ['let M; M = Math; M.sqrt(2)', 'hides what it computes'],
    ['const compute = (name: "sqrt") => Math[name](2)', 'hides what it computes'],
    ["Reflect.get(Math, 'sqrt')(2)", 'hides what it computes'],
    ["parseFloat('0.1')", 'uses parseFloat'],
    ["Number.parseFloat('0.1')", 'uses parseFloat'],
    ["['0.1'].map(parseFloat)", 'uses parseFloat'],
    ['const read = parseFloat', 'uses parseFloat'],
    ['(1.005).toFixed(2)', 'uses toFixed'],
    ["(1.005)['toFixed'](2)", 'uses toFixed'],
    ['const { toFixed } = Number.prototype', 'uses toFixed'],
    ['(1.005).toPrecision(2)', 'uses toPrecision'],
    ['Math.abs(1 - 2) < Number.EPSILON', 'uses EPSILON'],
    ["Math.abs(1 - 2) < Number['EPSILON']", 'uses EPSILON'],
    ['const { EPSILON: little } = Number', 'uses EPSILON'],
    ['const EPSILON = 1e-9', 'uses EPSILON'],
    ['const N = Number', 'hides what is taken from it'],
    ['const take = (name: "EPSILON") => Number[name]', 'hides what is taken from it'],
  ])('%j is found', (text, fault) => {
    const faults = staysExact({ file, text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
  });

  it.each([
    ['Math.floor(7 / 2) + Math.abs(-1) + Math.max(1, 2)'],
    ['const { floor, max: larger } = Math'],
    ["['1', '2'].map(Number)"],
    ['Number.isSafeInteger(3) && Number.MAX_SAFE_INTEGER > 3'],
    ["const advice = 'never Math.sqrt, parseFloat or toFixed'; // Math.hypot(3, 4)"],
    ['const weights = { seam: 0.6 }'],
  ])('%j is exact', (text) => expect(staysExact({ file, text })).toEqual([]));

  it.each(['src/measure/a.ts', 'src/geometry/deep/a.ts', 'src/cutting/a.ts', 'src/sewing/a.tsx'])('%s is watched', (watched) => {
    expect(staysExact({ file: watched, text: 'Math.sqrt(2)' })).toHaveLength(1);
  });

  it.each(['src/geometry/ink.ts', 'src/canvas/a.tsx', 'src/pattern/a.ts'])('%s makes ink, and may round', (ink) => {
    expect(staysExact({ file: ink, text: 'Math.sqrt(2)' })).toEqual([]);
  });

  it('in the house as it stands', () => {
    const sources = sourcesUnder('src', /\.tsx?$/);
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap(staysExact)).toEqual([]);
  });
});
