import process from 'node:process';
import { harmless } from '../pattern/plain-lines.ts';
import { run } from './run.ts';

/** The last word when something fails that nobody foresaw: still one sentence, never a stack trace. */
function giveUp(error: unknown): void {
  const [reason = ''] = String(error instanceof Error ? error.message : error).split('\n');
  process.stderr.write(`Piecewright failed, through no fault of the file (${harmless(reason)}); please report it with the file.\n`);
  process.exitCode = 1;
}

// A reader that has seen enough, such as head, closes the pipe.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') giveUp(error);
});

try {
  const { print, complaint, exit } = await run(process.argv.slice(2), process.stdin);
  process.exitCode = exit;
  process.stdout.write(print);
  if (complaint !== null) process.stderr.write(`${complaint}\n`);
} catch (error) {
  giveUp(error);
}
