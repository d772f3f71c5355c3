import { listed } from '../../../measure/words.ts';
import { numbers } from '../../../sewing/phrases/english/numbers.ts';
import type { AlsoPhrases } from '../also-phrases.ts';

export const also: AlsoPhrases = {
  foundations(sections) {
    const sewn = sections.filter(({ single }) => !single);
    const single = sections.filter((each) => each.single);
    const parts =
      sections.length === 1
        ? ''
        : ` There ${sewn.length === 1 ? 'is one section' : `are ${sewn.length} sections`}: ` +
          `${listed(sewn.map(({ letter, pieces }) => `${letter}, pieces ${numbers(pieces)}`))}` +
          `${single.length === 0 ? '' : `; ${listed(single.map(({ letter, pieces }) => `${letter}${numbers(pieces)}`))} ${single.length === 1 ? 'is a piece' : 'are pieces'} by ${single.length === 1 ? 'itself' : 'themselves'}`}.`;
    return (
      `On foundations: print them at full size; they are the mirror image, for you sew from the printed side, the cloth under it.${parts} ` +
      'Lay the first piece under its number, right side away from the foundation. Lay each next one on it, right sides together, sew on the line ' +
      `between them, trim the seam, fold the piece open and press.${sections.length === 1 ? '' : ' Then trim the sections and sew them together.'}`
    );
  },
  chain(count, seams, explained) {
    if (seams === 'both sides') {
      return explained
        ? `Chain-piece the ${count.said} pairs: one side of all the lines, then the other.`
        : `Chain-piece: feed all ${count.said} pairs through one after another without cutting the thread, along one side of the lines and ` +
            'then along the other; snip the threads between them.';
    }
    if (seams === 'one') {
      return explained
        ? `Chain-piece all ${count.said}.`
        : `Chain-piece: feed all ${count.said} through one after another without cutting the thread; then snip the threads between them and press.`;
    }
    return explained
      ? `Chain-piece all ${count.said}, one seam of each and then the next.`
      : `Chain-piece: sew the first seam of all ${count.said} one after another without cutting the thread, snip the threads between them and press; ` +
          'then the next seam of all, and so on.';
  },
};
