/*
 * Every check, one after the other: types; units and laws; the built app in a browser.
 * The last line says how many passed and how many failed; a check that could not run counts as failed.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const reports = mkdtempSync(join(tmpdir(), 'piecewright-tests-'));

const env = process.stdout.isTTY ? process.env : { ...process.env, NO_COLOR: '1' };

/** Runs one of the installed programs and shows what it says. @returns whether it ended well */
function run(title, script, ...words) {
  console.log(`\n=== ${title}`);
  const program = join(root, 'node_modules', script);
  return spawnSync(process.execPath, [program, ...words], { cwd: root, env, stdio: ['ignore', 1, 2] }).status === 0;
}

/** Runs projects of vitest.config.ts. @returns how many of their tests passed and failed */
function runTests(title, ...projects) {
  const report = join(reports, `${projects.join('-')}.json`);
  const ended = run(
    title,
    'vitest/vitest.mjs',
    'run',
    ...projects.flatMap((project) => ['--project', project]),
    '--reporter=default',
    '--reporter=json',
    `--outputFile=${report}`,
  );
  const { passed, failed } = counted(report);
  if (passed + failed === 0) console.log(`No test ran in "${title}".`);
  // An error outside any test, or no test at all, fails the run without failing a test.
  return { passed, failed: failed === 0 && (!ended || passed === 0) ? 1 : failed };
}

/** @returns what vitest's report says; a file that could not be read as tests counts as one failure */
function counted(report) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(report, 'utf8'));
    const brokenFiles = testResults.filter(
      (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
    );
    return { passed: numPassedTests, failed: numFailedTests + brokenFiles.length };
  } catch {
    return { passed: 0, failed: 0 };
  }
}

const results = [
  run('types', 'typescript/bin/tsc', '--noEmit') ? { passed: 0, failed: 0 } : { passed: 0, failed: 1 },
  runTests('units and laws', 'engine'),
  runTests('the built app in a browser', 'app', 'alone'),
];
rmSync(reports, { recursive: true, force: true });

const passed = results.reduce((sum, result) => sum + result.passed, 0);
const failed = results.reduce((sum, result) => sum + result.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
