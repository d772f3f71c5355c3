import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { usesItsOwnPackages } from './packages.ts';
import { sourcesUnder } from './source.ts';

describe('a file uses only packages its room may know', () => {
  const rule = usesItsOwnPackages(['react', 'konva', 'valibot', '@scope/known']);

  it.each([
    [
      'React below the screen',
      'src/pattern/page.ts',
      "import type { ReactNode } from 'react';",
      'page.ts:1 imports react outside canvas and app',
    ],
    ['Konva below the screen', 'src/geometry/ink.ts', "import Konva from 'konva/lib/Core';", 'imports konva/lib/Core outside'],
    ['Node outside the command line', 'src/files/open.ts', "import { readFile } from 'node:fs/promises';", 'outside cli'],
    ['Node without its prefix', 'src/cli/main.ts', "import { readFile } from 'fs';", 'not among the dependencies'],
    ['the writer of PDF on the screen', 'src/app/print.ts', "import PDFDocument from 'pdfkit';", 'outside pattern'],
    ['a package for developers', 'src/geometry/area.ts', "import { area } from 'jsts/org/locationtech';", 'not among the dependencies'],
    ['an unknown package of a known scope', 'src/files/a.ts', "const a = () => import('@scope/other/deep');", 'not among the dependencies'],
  ])('%s is found', (_, file, text, fault) => {
    const faults = rule({ file, text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
  });

  it.each([
    ['src/app/main.tsx', "import { useState } from 'react';"],
    ['src/cli/main.ts', "import { readFile } from 'node:fs/promises';"],
    ['src/files/schema.ts', "import * as v from 'valibot'; import known from '@scope/known/deep';"],
  ])('%s may say %s', (file, text) => expect(rule({ file, text })).toEqual([]));

  it('in the house as it stands', () => {
    const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as { dependencies: Record<string, string> };
    const sources = sourcesUnder('src', /\.tsx?$/);
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap(usesItsOwnPackages(Object.keys(dependencies)))).toEqual([]);
  });
});
