import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { zipOf } from '../../../src/pattern/pictures-zip.ts';

const FILES = [
  { name: 'step-01.svg', content: '<svg>½</svg>'.repeat(50) },
  { name: 'step-01.png', content: Uint8Array.from({ length: 300 }, (_, i) => i % 251) },
];

describe('an archive of pictures', () => {
  test('gives back what is in it, packed where that helps', () => {
    const zip = zipOf(FILES);
    const back = unzipSync(zip);
    expect(new TextDecoder().decode(back['step-01.svg'])).toBe(FILES[0]!.content);
    expect([...back['step-01.png']!]).toEqual([...(FILES[1]!.content as Uint8Array)]);
    expect(zip.length).toBeLessThan(800);
  });

  test('is the same bytes at any hour and in any place', () => {
    const [zone, here] = [process.env['TZ'], Buffer.from(zipOf(FILES))];
    try {
      for (const other of ['Pacific/Auckland', 'America/Los_Angeles']) {
        process.env['TZ'] = other;
        expect(here.equals(Buffer.from(zipOf(FILES)))).toBe(true);
      }
    } finally {
      if (zone === undefined) delete process.env['TZ'];
      else process.env['TZ'] = zone;
    }
  });

  test.skipIf(spawnSync('unzip', ['-v']).status !== 0)('is opened by another program', () => {
    const folder = mkdtempSync(join(tmpdir(), 'zip-'));
    writeFileSync(join(folder, 'a.zip'), zipOf(FILES));
    expect(spawnSync('unzip', ['-q', 'a.zip'], { cwd: folder }).status).toBe(0);
    expect(readFileSync(join(folder, 'step-01.svg'), 'utf8')).toBe(FILES[0]!.content);
    rmSync(folder, { recursive: true });
  });
});
