import { ink, inkAt, rectangle, type Mark, type PhotoOnCloth } from '../diagrams/diagram.ts';
import { photosOnPieces, type PhotoOnPiece } from '../photo-places.ts';
import type { WarningCode } from '../warnings.ts';
import { KEPT } from '../telling/kept.ts';
import type { Boxed, Facts, Figure, Flow, Section } from './content.ts';
import { plain, size, titleOf, type Writing } from './writing.ts';

/** @returns the block as it looks when it is sewn, in its fabrics, without seams */
export function blockPicture({ block, pattern, words, print }: Writing): Figure {
  const scale = ink(pattern.lattice.step);
  const { finished } = pattern.block;
  const [width, height] = [ink(finished.width), ink(finished.height)];
  const photos = photosOnPieces(block, pattern);
  const cloth = pattern.pieces.map(({ id, fabric, outline }): Mark => {
    const lies = photos.get(id);
    return { mark: 'cloth', fabric, side: 'right', outline: outline.map((point) => inkAt(point, scale)), ...(lies && { photo: photoFrom(lies) }) };
  });
  return {
    name: 'block',
    says: print(words.cover.picture(plain(titleOf({ pattern, words })))),
    frame: { left: 0, top: 0, width, height },
    marks: [
      ...cloth,
      { mark: 'edge', outline: rectangle(0, 0, width, height) },
    ],
  };
}

/** @returns a photo as it lies on a piece, from the corner of it that is its upper left one */
function photoFrom({ picture, across, at: [x, y], shows: [u, v], turn }: PhotoOnPiece): PhotoOnCloth {
  const [dx, dy] = [-u * across, (-v * across * picture.height) / picture.width];
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return { picture, at: [x + dx * cos - dy * sin, y + dx * sin + dy * cos], width: across, turn };
}

/** Warnings that are about what is bought, and stand where that is told. */
const ABOUT_CLOTH: readonly WarningCode[] = ['no margin', 'longer than the cloth'];

/** @returns the open warnings of a section in a frame, or of all that are not shown; her words do not replace them */
export function warningBoxes({ pattern, words }: Pick<Writing, 'pattern' | 'words'>, of: 'cover' | 'materials'): readonly Boxed[] {
  const { proof } = pattern;
  const warnings = pattern.warnings.filter(({ code }) => ABOUT_CLOTH.includes(code) === (of === 'materials'));
  const said = (at: string, told: string): { readonly at: string; readonly told: string } => ({ at: `warnings/${at}`, told });
  const fails: Boxed = {
    flow: 'boxed',
    at: 'warnings/proof',
    look: 'warning',
    title: said('proof/title', words.cover.doNotCut),
    said: [words.cover.notTheDrawing, ...proof.faults].map((told, i) => said(`proof/${i + 1}`, told)),
  };
  const open: Boxed = {
    flow: 'boxed',
    at: `warnings/${of}`,
    look: 'warning',
    title: said(`${of}/title`, of === 'cover' ? words.cover.beforeCutting : words.cover.beforeBuying),
    said: warnings.map(({ code, says }) => said(`${of}/${code}`, says)),
  };
  return [...(proof.holds || of !== 'cover' ? [] : [fails]), ...(warnings.length === 0 ? [] : [open])];
}

/** @returns the first page: what it is, what it looks like, how large it comes out, and whose it is */
export function coverSection(writing: Writing): Section {
  const { pattern, words, style, said, block } = writing;
  const { publication } = block;
  const { finished, unfinished } = pattern.block;
  const { blocks } = pattern.choices;
  const { facts: label } = words.cover;
  const fact = (at: string, name: string, told: string): Facts['facts'][number] => ({
    label: said(`cover/${at}/label`, name),
    value: said(`cover/${at}`, told),
  });
  const facts: Facts = {
    flow: 'facts',
    at: 'cover/facts',
    facts: [
      fact('finished', label.finished, size(writing, finished)),
      fact('unfinished', label.unfinished, size(writing, unfinished)),
      fact('pieces', label.pieces, KEPT.count(pattern.figures.pieces)),
      ...(pattern.units.length > 0 ? [fact('units', label.units, KEPT.count(pattern.units.length))] : []),
      ...(blocks > 1 ? [fact('blocks', label.blocks, KEPT.count(blocks))] : []),
    ],
  };
  const own = (text: string | undefined): string | null => (text === undefined || text.trim() === '' ? null : plain(text.trim()));
  const line = (at: string, told: string | null, look: 'plain' | 'strong' | 'quiet'): readonly Flow[] =>
    told === null ? [] : [{ flow: 'paragraph', said: { at: `cover/${at}`, told }, look }];
  const maker = own(style.maker);
  const { logo } = style;
  return {
    name: 'cover',
    title: { at: 'cover/title', told: plain(titleOf(writing)) },
    ownPage: false,
    items: [
      ...line('subtitle', own(publication?.subtitle), 'strong'),
      { flow: 'figures', at: 'cover/picture', figures: [{ figure: blockPicture(writing) }], most: 0.55 },
      facts,
      ...warningBoxes(writing, 'cover'),
      ...(logo ? [{ flow: 'photo', at: 'cover/logo', picture: logo, caption: null } as const] : []),
      ...line('maker', maker && words.cover.maker(maker), 'plain'),
      ...line('licence', own(style.licence), 'quiet'),
    ],
  };
}
