import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FLOORS, keepsToItsFloor, ledTo } from './floors.ts';
import { importsOf } from './imports.ts';
import { sourcesUnder } from './source.ts';

describe('a file imports only from its own room or a lower floor', () => {
  const planted: [what: string, file: string, text: string, fault: string][] = [
    [
      'an import upward',
      'src/geometry/line.ts',
      "\nimport { cuts } from '../cutting/cut.ts';",
      'line.ts:2 imports ../cutting/cut.ts, upward from geometry to cutting',
    ],
    [
      'an import of a type upward',
      'src/block/block.ts',
      "import type { Pattern } from '../pattern/pattern.ts';",
      'upward from block to pattern',
    ],
    [
      'one type among values',
      'src/block/block.ts',
      "import { type Pattern } from '../pattern/pattern.ts';",
      'upward from block to pattern',
    ],
    ['a type fetched in passing', 'src/block/block.ts', "let a: import('../pattern/pattern.ts').Pattern;", 'upward from block to pattern'],
    [
      'handing on from above',
      'src/sewing/step.ts',
      "export { quilt } from '../quilt/quilt.ts';\nexport const own = 1;",
      'upward from sewing to quilt',
    ],
    ['a dynamic import upward', 'src/pattern/pdf.ts', "const a = () => import('../app/store.ts');", 'upward from pattern to app'],
    ['a template as a path', 'src/pattern/pdf.ts', 'const a = () => import(`../app/store.ts`);', 'upward from pattern to app'],
    [
      'a glob that reaches up',
      'src/block/all.ts',
      "const a = import.meta.glob(['./*.ts', '../files/*.ts']);",
      'upward from block to files',
    ],
    ['a worker above', 'src/files/save.ts', "new Worker(new URL('../app/worker.ts', import.meta.url));", 'upward from files to app'],
    ['a worker by its query', 'src/files/save.ts', "import Worker from '../app/worker.ts?worker';", 'upward from files to app'],
    ['a required file', 'src/files/save.ts', "import save = require('../app/save.ts');", 'upward from files to app'],
    ['a reference comment', 'src/files/save.ts', '/// <reference path="../app/globals.ts" />', 'upward from files to app'],
    [
      'the way round through the top folder',
      'src/measure/surd.ts',
      "import { a } from '../../src/geometry/point.ts';",
      'upward from measure to geometry',
    ],
    ['a path from the top', 'src/measure/surd.ts', "import { a } from '/src/geometry/point.ts';", 'upward from measure to geometry'],
    ['the command line in the app', 'src/app/main.tsx', "import { run } from '../cli/run.ts';", 'app and cli do not know each other'],
    [
      'the app in the command line',
      'src/cli/main.ts',
      "import type { State } from '../app/store.ts';",
      'cli and app do not know each other',
    ],
    ['a barrel', 'src/geometry/index.ts', "export * from './point.ts';", 'hands on all of ./point.ts'],
    [
      'a barrel with a name',
      'src/geometry/index.ts',
      "export * as point from './point.ts';\nexport const a = 1;",
      'hands on all of ./point.ts',
    ],
    [
      'a barrel name by name',
      'src/geometry/index.ts',
      "export { point } from './point.ts';\nexport type { Line } from './line.ts';",
      'only hands on',
    ],
    ['a path worked out as it runs', 'src/app/open.ts', 'const a = (b: string) => import(b);', 'only known as it runs'],
    ['no extension', 'src/geometry/line.ts', "import { point } from './point';", 'without its extension'],
    ['a folder', 'src/geometry/line.ts', "import { point } from '..';", 'without its extension'],
    ['a test', 'src/geometry/line.ts', "import { a } from '../../tests/geometry/a.ts';", 'code from outside src'],
    ['a room nobody knows', 'src/geometry/line.ts', "import { a } from '../misc/a.ts';", 'lies in no room'],
    ['a file in no room', 'src/stray.ts', 'export const a = 1;', 'src/stray.ts:1 lies in no room'],
  ];

  it.each(planted)('%s is found', (_, file, text, fault) => {
    const faults = keepsToItsFloor({ file, text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
    expect(faults[0]).toMatch(/^src\/[\w/.]+:\d+ /);
  });

  const fine: [what: string, file: string, text: string][] = [
    ['its own room', 'src/geometry/piecing/tree.ts', "import { point } from '../point.ts';"],
    ['a lower floor', 'src/cutting/cut.ts', "import type { Rational } from '../measure/rational.ts';"],
    ['a package', 'src/app/main.tsx', "import { createRoot } from 'react-dom/client';"],
    ['data from outside src', 'src/app/demo.ts', "import.meta.glob('../../demo-blocks/*.json', { query: '?drawn' });"],
    ['a style sheet beside it', 'src/app/main.tsx', "import './app.css';"],
    ['a path that is only written about', 'src/measure/surd.ts', "const a = '../app/store.ts'; // import { b } from '../app/store.ts';"],
    ['one door to a package', 'src/canvas/konva.ts', "export { Layer } from 'konva/lib/Layer.js';"],
    ['one thing handed on beside its own', 'src/geometry/line.ts', "export type { Point } from './point.ts';\nexport const a = 1;"],
  ];

  it.each(fine)('%s may be imported', (_, file, text) => {
    expect(keepsToItsFloor({ file, text })).toEqual([]);
  });

  it('from every room upward is found, and from every room downward is not', () => {
    FLOORS.flat().forEach((from) => {
      FLOORS.flat().forEach((to) => {
        const height = (room: string) => FLOORS.findIndex((rooms) => (rooms as readonly string[]).includes(room));
        const faults = keepsToItsFloor({ file: `src/${from}/a.ts`, text: `import type { B } from '../${to}/b.ts';` });
        expect(faults.length, `${from} imports ${to}`).toBe(from === to || height(to) < height(from) ? 0 : 1);
      });
    });
  });
});

describe('the house as it stands', () => {
  const sources = sourcesUnder('src', /\.tsx?$/);

  it('keeps to its floors', () => {
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap(keepsToItsFloor)).toEqual([]);
  });

  it('imports files that are there, so that no rule looks past them', () => {
    const reached = sources.flatMap((source) =>
      importsOf(source).map(({ wanted }) => (wanted === null ? null : ledTo(source.file, wanted))),
    );
    const paths = reached.filter((path) => path !== null && !path.includes('*'));
    expect(paths.length).toBeGreaterThan(0);
    expect(paths.filter((path) => path !== null && !existsSync(path))).toEqual([]);
  });
});
