import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { setPhoto } from '../../../src/block/colour/photos.ts';
import { readFaces } from '../../../src/cli/faces.ts';
import { formatBlock, parseBlock } from '../../../src/files/block-file.ts';
import type { Result } from '../../../src/measure/problem.ts';
import { rational } from '../../../src/measure/rational.ts';
import { published } from '../../../src/pattern/document/published.ts';
import { ENGLISH } from '../../../src/pattern/english.ts';
import { usualStyle, type HouseStyle } from '../../../src/pattern/house-style.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import { settingIn } from '../../../src/pattern/pages/face.ts';
import { plainPdf } from '../../../src/pattern/pages/page-pdf.ts';
import { pageSvg } from '../../../src/pattern/pages/page-svg.ts';
import { movedItem } from '../../../src/pattern/pages/page.ts';
import { photosOnPieces } from '../../../src/pattern/photo-places.ts';
import { photoWith } from '../../block/photo.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

/** A sail on the sea, 4 by 4 in.; the sail of a photo that shows 3 by 2 in., the place in its middle as the file says. */
function sail(photoAt?: readonly number[]): Block {
  const file = {
    format: 'piecewright/block', version: 1, name: 'Sail', finished: { width: '4', height: '4', unit: 'in' }, grid: { columns: 4, rows: 4 },
    fabrics: [{ id: 'sea', name: 'Sea', color: '#2f6f8f' }, { id: 'linen', name: 'Linen', color: '#f4f1ea', directional: true }], ground: 'sea',
    patches: [{ fabric: 'linen', points: [[1, 0], [3, 0], [3, 2], [1, 2]], ...(photoAt && { photoAt }) }],
  };
  return got(setPhoto(got(parseBlock(JSON.stringify(file))), 'linen', { picture: photoWith('gulls'), across: rational(3) }));
}

const faces = await readFaces();
const setting = settingIn(faces);
const printed = (block: Block, ink: HouseStyle['ink'] = 'colours') =>
  published(block, got(makePattern(block)), { ...usualStyle('in'), ink }, setting, ENGLISH).document;
const filled = (block: Block, ink?: HouseStyle['ink']) =>
  printed(block, ink).pages.flatMap(({ items }, page) => items.flatMap((item) => (item.kind === 'path' && item.photo ? [{ page, ...item, photo: item.photo }] : [])));

describe('a photo of cloth', () => {
  it('lies in the middle of a patch with the place that the maker has chosen, and the file keeps it', () => {
    const block = sail([250, 750]);
    expect(got(parseBlock(formatBlock(block)))).toEqual(block);
    const lies = [...photosOnPieces(block, got(makePattern(block))).values()];
    expect(lies).toMatchObject([{ at: [2, 1], shows: [0.25, 0.75], turn: 0, across: 3 }]);
    const refused = parseBlock(formatBlock(block).replace('[250, 750]', '[250, 1001]'));
    expect(refused.ok ? '' : refused.problem.sentence).toContain('a pair of whole numbers from 0 to 1000');
  });

  it('is printed on the cover at the scale of its picture, and in every swatch; where hatches stand for colours, nowhere', () => {
    const [cover, ...swatches] = filled(sail([250, 750]));
    expect(cover!.page).toBe(0);
    const xs = cover!.steps.flatMap((step) => (step[0] === 'L' || step[0] === 'M' ? [step[1]] : []));
    // The patch is 2 in. wide, the photo shows 3.
    expect(cover!.photo.width / (Math.max(...xs) - Math.min(...xs))).toBeCloseTo(1.5, 9);
    // Three quarters of an inch of the photo lie left of the patch's middle, an inch of the patch does.
    expect((cover!.photo.at[0] - Math.min(...xs)) / cover!.photo.width).toBeCloseTo((1 - 0.75) / 3, 9);
    expect(swatches.length).toBeGreaterThanOrEqual(2);
    expect(filled(sail(), 'hatches')).toEqual([]);
    const moved = movedItem(cover!, 5, 7);
    expect(moved.kind === 'path' && moved.photo!.at).toEqual([cover!.photo.at[0] + 5, cover!.photo.at[1] + 7]);
  });

  it('is in the PDF once, and in an SVG once', async () => {
    const document = printed(sail());
    const pdf = Buffer.from(await plainPdf(document, faces)).toString('latin1');
    expect(pdf.match(/\/Subtype \/Image/g)).toHaveLength(1);
    expect(pdf.match(/\/I1 Do/g)!.length).toBeGreaterThan(2);
    const svg = pageSvg(document.pages[0]!, 'Sail', 'en');
    expect(svg.match(/data:image/g)).toHaveLength(1);
    expect(svg).toContain('fill="url(#photo-');
  });
});
