import { posix } from 'node:path';
import { importsOf } from './imports.ts';
import { ledTo } from './floors.ts';
import { where, type Rule } from './source.ts';

/** Packages that only some rooms may use, and why. */
const KEPT_TO: readonly { readonly packages: RegExp; readonly rooms: readonly string[]; readonly why: string }[] = [
  { packages: /^(react|react-dom|lucide-react|konva|react-konva)(\/|$)/, rooms: ['canvas', 'app'], why: 'the engine knows no screen' },
  { packages: /^node:/, rooms: ['cli'], why: 'the engine also runs in a browser' },
  { packages: /^(pdfkit|fflate)$/, rooms: ['pattern'], why: 'pages are laid out as items, and one writer draws them as PDF' },
  // The page's worker only asks where its WebAssembly lies.
  { packages: /^highs(\/|$)/, rooms: ['cutting', 'app'], why: 'only the layout of cloth is solved, and only where that is asked for' },
];

/**
 * @param installedWithUs names under "dependencies" in package.json: what a person who installs the package gets
 * @returns the rule that a file uses only packages its room may know, and none that only developers have
 */
export const usesItsOwnPackages =
  (installedWithUs: readonly string[]): Rule =>
  (source) =>
    importsOf(source).flatMap(({ wanted, start }) => {
      if (wanted === null || ledTo(source.file, wanted) !== null) return [];
      const room = posix.dirname(source.file).split('/')[1] ?? '';
      const kept = KEPT_TO.find(({ packages }) => packages.test(wanted));
      const name = wanted
        .split('/')
        .slice(0, wanted.startsWith('@') ? 2 : 1)
        .join('/');
      if (kept && !kept.rooms.includes(room))
        return [`${where(source, start)} imports ${wanted} outside ${kept.rooms.join(' and ')}: ${kept.why}`];
      if (wanted.startsWith('node:') || installedWithUs.includes(name)) return [];
      return [`${where(source, start)} imports ${wanted}, which is not among the dependencies in package.json`];
    });
