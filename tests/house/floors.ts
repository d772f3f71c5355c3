import { posix } from 'node:path';
import { importsOf, type Import } from './imports.ts';
import { nodesOf, where, type Rule, type Source } from './source.ts';

/** The rooms of src/ from the lowest floor to the highest. Rooms on one floor do not know each other. */
export const FLOORS = [
  ['measure'],
  ['geometry'],
  ['block'],
  ['cutting'],
  ['sewing'],
  ['quilt'],
  ['pattern'],
  ['files'],
  ['canvas'],
  ['app', 'cli'],
] as const;

const floorOf = (room: string): number => FLOORS.findIndex((rooms) => (rooms as readonly string[]).includes(room));

/** @returns the room of a path such as "src/measure/rational.ts", or null where it lies in none */
function roomOf(path: string): string | null {
  const room = /^src\/([^/]+)\//.exec(path)?.[1] ?? null;
  return room !== null && floorOf(room) >= 0 ? room : null;
}

/** @returns the path an import of our own files leads to, from the project's folder; null for a package */
export function ledTo(from: string, wanted: string): string | null {
  const path = wanted.replace(/^!/, '').replace(/\?.*$/, '');
  if (path.startsWith('/')) return posix.normalize(path.slice(1));
  return /^\.\.?(\/|$)/.test(path) ? posix.join(posix.dirname(from), path) : null;
}

/** A file imports only from its own room or a lower floor, types included; by its full name; and nothing hands on a whole file. */
export const keepsToItsFloor: Rule = (source) => {
  const room = roomOf(source.file);
  if (room === null) return [`${source.file}:1 lies in no room of the house: move it into one of ${FLOORS.flat().join(', ')}`];
  const imports = importsOf(source);
  const faults = imports.flatMap((found) => faultOf(source.file, room, found).map((fault) => `${where(source, found.start)} ${fault}`));
  return isBarrel(source, imports)
    ? [...faults, `${source.file}:1 only hands on what other files hold: import those files instead`]
    : faults;
};

function faultOf(file: string, room: string, { wanted, handsOnAll }: Import): string[] {
  if (handsOnAll) return [`hands on all of ${wanted}: import the file that holds the thing`];
  if (wanted === null) return ['imports what is only known as it runs: spell the path out'];
  const path = ledTo(file, wanted);
  if (path === null) return [];
  if (!/\.\w+$/.test(path)) return [`imports ${wanted} without its extension`];
  if (!path.startsWith('src/')) {
    return /\.[cm]?[jt]sx?$/.test(path) ? [`imports ${wanted}, code from outside src: only data may come from there`] : [];
  }
  const other = roomOf(path);
  if (other === null) return [`imports ${wanted}, which lies in no room`];
  if (other === room) return [];
  if (floorOf(other) === floorOf(room)) return [`imports ${wanted}: ${room} and ${other} do not know each other`];
  return floorOf(other) > floorOf(room) ? [`imports ${wanted}, upward from ${room} to ${other}`] : [];
}

/** @returns whether a file holds nothing but `export { … } from` our own files; a door to a package is no barrel */
function isBarrel(source: Source, imports: readonly Import[]): boolean {
  const handedOn = imports.filter((found) => found.handsOn && !found.handsOnAll);
  if (!handedOn.some(({ wanted }) => wanted !== null && ledTo(source.file, wanted) !== null)) return false;
  const statements = nodesOf(source).filter(({ place }) => place.parent?.type === 'Program');
  return statements.every(({ node }) => node.type === 'ImportDeclaration' || (/^Export/.test(node.type) && node['declaration'] == null));
}
