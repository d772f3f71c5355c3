import { capital, listed } from '../../../measure/words.ts';
import type { WrittenPhrases } from '../written-phrases.ts';

const cuts = (ids: readonly string[]): string => `${ids.length === 1 ? 'cut' : 'cuts'} ${listed(ids)}`;
const pieces = ({ n, said }: { readonly n: number; readonly said: string }): string => `${said} ${n === 1 ? 'piece' : 'pieces'}`;
const fromTo = ([from, to]: readonly [string, string]): string => `from ${from} to ${to}`;
const theirs = (ids: readonly string[], sizes: readonly string[]): string =>
  `${capital(cuts(ids))} (${listed(sizes)}) ${ids.length === 1 ? 'is' : 'are'}`;
const them = ({ length }: readonly string[]): string => (length === 1 ? 'it' : 'them');

/** What `makePattern` writes, in English. */
export const WRITTEN_IN_ENGLISH: WrittenPhrases = {
  listed,
  size: (width, height) => `${width} by ${height}`,
  clothSize: (width, height) => `${width} × ${height}`,
  lessThan: (hundredth) => `less than ${hundredth}`,

  near: (length) => `about ${length}`,
  point: (across, down) => `${across} across, ${down} down`,
  at: (length, along) => `at ${length} ${along}`,
  runs: (ends, along) => `${listed(ends.map(fromTo))} ${along}`,
  slanted: (ends) => listed(ends.map(fromTo)),

  division: (at, cloth, runs, { n, said }) => {
    const price =
      n > 1
        ? `${said} more pieces, ${said} more seams`
        : n > 0
          ? 'one more piece, one more seam'
          : 'it opens what lies right round another fabric, and costs nothing by itself';
    return `The seam${at && ` ${at}`} runs through ${cloth} ${runs}: ${price}.`;
  },
  withinCloth: (cloth, places, { n, said }) => {
    const where = places ? `: ${places.map(({ at, runs }) => `${at && `${at} `}${runs}`).join('; ')}` : ` along ${said} lines`;
    return `Between areas of ${cloth}, all cut from one cloth, the ${n === 1 ? 'seam stays' : 'seams stay'}${where}.`;
  },
  refused: {
    'no place': 'it lies on no seam right across the block and on no rectangle of it; take it away and set it anew.',
    crosses: 'it cuts into the unit of an earlier pin; take one of the two away.',
    locks: 'a whole patch would be divided, or no straight seams are left for the rest; take it away, or let that patch be divided.',
  },

  noSuchWay: (asked, taken) => `This drawing has no way "${asked}"; it is sewn in ${taken}.`,
  notAssembled: (order) => `The units of this drawing cannot be put together ${order === 'web' ? 'as a web' : `by ${order}`} by straight seams; they are put together as found.`,
  lostMethod: (method, from, to) => `The method ${method} is chosen for a unit from ${from} to ${to}, but none is sewn there; it does nothing.`,
  lostPressing: (from, to) => `A pressing is chosen for a seam from ${from} to ${to}, but none is sewn there; it does nothing.`,

  upsideDown: (cloths) =>
    `Triangles from strips lie head to tail, so every second one of ${listed(cloths)} is upside down; choose another method where the print must stand.`,
  tooLarge: (some, id, size, form, cloth) =>
    `${some === 'all' ? 'Cut' : `${pieces(some)} of cut`} ${id} (${size}) cannot be cut from the ${form} of ${cloth}: choose larger cloth for it.`,

  cuts,
  manyCuts: ({ n, said }) => `${said} ${n === 1 ? 'cut' : 'cuts'}`,
  smallPieces: (count, where, least, narrowest, from) => {
    const one = count.n === 1;
    return (
      `${pieces(count)} (${where}) ${one ? 'finishes' : 'finish'} under ${least}` +
      `${one ? ', at' : ', the narrowest at'} ${narrowest}, and ${one ? 'is' : 'are'} hard to sew true${from === null ? '' : `; from ${from} on none does`}.`
    );
  },
  biasOnEdge: (count, where, remedy) => {
    const one = count.n === 1;
    return (
      `${pieces(count)} (${where}) ${one ? 'has' : 'have'} bias on the outer edge of the block, which stretches: ` +
      `cut ${one ? 'it' : 'them'} from squares cut ${remedy === 'twice' ? 'twice on the diagonals' : 'once on the diagonal'}, so that the straight grain lies there.`
    );
  },
  outgrown: ({ mark, cuts: where, one, wider, higher, even, instead }) => {
    const much = listed([...(wider === null ? [] : [`${wider} too wide`]), ...(higher === null ? [] : [`${higher} too high`])]);
    const better = instead.length > 0 ? `; at ${instead.join(' or ')} every plain cut is on a mark` : '';
    return (
      `Cut up to the next ${mark} of the ruler, ${where} ${one ? 'is' : 'are'} too large: untrimmed, ` +
      `the block comes out ${even ? '' : 'up to '}${much}${even ? '' : ', and its rows do not meet'}${better}.`
    );
  },
  widerThanCloth: (ids, sizes, room) =>
    `${theirs(ids, sizes)} wider than the cloth (${room}): sew widths of cloth together before you cut ${them(ids)}.`,
  longerThanCloth: (ids, sizes, room, { n, said }, seam) =>
    `${theirs(ids, sizes)} longer than the cloth is wide (${room}): cut ${them(ids)} along the length of the cloth, ` +
    `or first join ${said} ${n === 1 ? 'strip' : 'strips'} end to end with a ${seam} seam.`,
  noMargin: (cloths, left, more) =>
    `Of ${listed(cloths.map(([name, buy]) => `${name} (${buy})`))} less than ${left} is left over to straighten the edge: ` +
    `buy ${more} more${cloths.length > 1 ? ' of each' : ''}, or choose a margin.`,

  // Restated from the safety sheets named in DEVELOPERS.md, Sources.
  cautions: [
    'Close the rotary cutter after every cut; cut away from yourself, fingers behind the ruler’s edge, on a cutting mat.',
    'Cut standing, in closed shoes, with a sharp blade, and not when tired; keep blades, needles and pins away from children.',
    'Take pins out before they reach the needle; switch the machine off to thread it.',
    'Stand the iron on its heel, keep face and hands out of the steam, and unplug it when you leave.',
  ],
};
