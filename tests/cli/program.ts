import { spawn } from 'node:child_process';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { inject } from 'vitest';
import { run } from '../../src/cli/run.ts';
import type { patternJson } from '../../src/pattern/pattern-json.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** How a program ended and what it wrote. */
export interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the real program, built as it is installed, with something piped in. */
export function piecewright(args: readonly string[], { input = '', env = {}, hangUp = false } = {}): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [inject('program'), ...args], { cwd: ROOT, env: { ...process.env, ...env } });
    let [out, err] = ['', ''];
    child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject).on('close', (exit) => resolve({ exit, out, err }));
    // The program may end before it has read everything.
    child.stdin.on('error', () => undefined).end(input);
    if (hangUp) child.stdout.destroy();
  });
}

/** What `plan --json` prints. */
export type Data = ReturnType<typeof patternJson>;

/** Runs the program's inside in this process, for the bulk of the checks. */
export const inside = (...args: readonly string[]): ReturnType<typeof run> => run(args, Readable.from([]));

/** @returns what `plan --json` prints for a file, which must be sound */
export async function planned(file: string, ...choices: readonly string[]): Promise<Data> {
  const { print, complaint, exit } = await inside('plan', file, '--json', ...choices);
  if (exit !== 0) throw new Error(`exit ${exit}: ${complaint}`);
  return JSON.parse(print) as Data;
}

/** A file of the project, whatever folder the tests run in. */
export const fileAt = (path: string): string => `${ROOT}${path}`;
export const caseFile = (name: string): string => fileAt(`tests/cases/${name}.block.json`);
