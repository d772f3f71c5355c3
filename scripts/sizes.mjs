/* Prints how long the source files are, room by room, and the longest ones. A report to read, not a check. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const source = join(dirname(dirname(fileURLToPath(import.meta.url))), 'src');
const files = readdirSync(source, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((file) => ({ file: relative(source, file), lines: readFileSync(file, 'utf8').split('\n').length - 1 }))
  .sort((a, b) => b.lines - a.lines);

const rooms = new Map();
for (const { file, lines } of files) {
  const room = file.split(/[\\/]/)[0];
  rooms.set(room, [...(rooms.get(room) ?? []), lines]);
}

console.log('room        files   lines   median  longest');
for (const [room, lines] of [...rooms].sort()) {
  const figures = [lines.length, lines.reduce((a, b) => a + b), lines[Math.floor(lines.length / 2)], lines[0]];
  console.log(room.padEnd(9) + figures.map((figure) => String(figure).padStart(8)).join(''));
}
console.log('\nthe longest files');
for (const { file, lines } of files.slice(0, 10)) console.log(String(lines).padStart(6) + '  ' + file);
