import { describe, expect, it } from 'vitest';
import type { Publication } from '../../src/block/publication.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { formatHouseStyle, parseHouseStyle } from '../../src/files/house-style-file.ts';
import { usualStyle, type HouseStyle } from '../../src/pattern/house-style.ts';
import { must } from '../block/drawn.ts';
import { JPEG, photo } from '../block/photo.ts';
import { shooFly, spoilt } from './shoo-fly.ts';

const publication: Publication = {
  subtitle: 'For the boat shed',
  sections: [{ section: 'units', shown: true }, { section: 'care', shown: false }],
  words: [{ at: 'title', language: 'en', was: 'Sew {1}.', now: 'Sew {1}, then rest.' }],
  parts: [
    { id: 'part-1', section: 'units', after: 'title', part: 'tip', text: 'Mind <the> "steam" & rest.' },
    { id: 'part-2', section: 'cover', part: 'photo', text: '', picture: 'picture-1' },
  ],
  pictures: [{ id: 'picture-1', ...photo }],
};
const style: HouseStyle = {
  ...usualStyle('cm'), language: 'de', columns: 2, sections: [{ section: 'notes', shown: false }],
  maker: 'The Guild of the Point', licence: 'Sew as many as you like.', foot: 'Kittiwake Point', logo: { id: 'logo', ...photo },
};

const fileWith = (path: readonly (string | number)[], value: unknown): string =>
  JSON.stringify(spoilt({ ...shooFly(), publication: structuredClone(publication) }, ['publication', ...path], value));
const styleWith = (path: readonly (string | number)[], value: unknown): string => JSON.stringify(spoilt(JSON.parse(formatHouseStyle(style)) as object, path, value));

/** @returns what is said of a file that is refused, in one plain sentence */
function said(read: ReturnType<typeof parseBlock> | ReturnType<typeof parseHouseStyle>): string {
  if (read.ok) return 'taken';
  expect(read.problem.sentence).toMatch(/^[^\n]{10,300}[^.]\.$/);
  expect(read.problem.sentence).not.toMatch(/\bat \S+:\d+|Error|undefined|\[object|Expected/);
  return read.problem.sentence;
}

describe('what a designer adds to a pattern', () => {
  it('is written with the block and read back the same', () => {
    const block = must(parseBlock(JSON.stringify({ ...shooFly(), publication })));
    expect(block.publication).toEqual(publication);
    expect(must(parseBlock(formatBlock(block)))).toEqual(block);
  });

  it('is nothing where all of it is empty', () => {
    const empty = { subtitle: '', sections: [], words: [], parts: [], pictures: [] };
    expect(must(parseBlock(JSON.stringify({ ...shooFly(), publication: empty })))).not.toHaveProperty('publication');
  });

  it.each<readonly [string, readonly (string | number)[], unknown, string]>([
    ['a picture that is none', ['pictures', 0, 'jpeg'], 'not a picture', 'Picture 1 is not written in base 64; choose it anew'],
    ['a picture of another size', ['pictures', 0, 'width'], 5, 'Picture 1 has another size than it says'],
    ['a picture that ends early', ['pictures', 0, 'jpeg'], JPEG.slice(0, 400), 'Picture 1 is cut short'],
    ['a picture beyond all measure', ['pictures', 0, 'jpeg'], 'A'.repeat(1_400_001), "Picture 1's jpeg is 1,400,001 signs long; a picture may have 1,400,000"],
    ['a picture of no width', ['pictures', 0, 'width'], 0, "Picture 1's width must be a whole number of pixels from 1 to 4,000; this one is 0."],
    ['25 pictures', ['pictures'], Array.from({ length: 25 }, (_, i) => ({ id: `p${i}`, ...photo })), 'The pattern has 25 pictures; it may have at most 24'],
    ['two pictures of one id', ['pictures', 1], publication.pictures![0], 'Pictures 1 and 2 have the same id "picture-1"'],
    ['a photo without its picture', ['pictures'], undefined, 'Own part 2 is a photo without a picture'],
    ['a tip with a picture', ['parts', 0, 'picture'], 'picture-1', 'Own part 1 has a picture and is no photo'],
    ['a song', ['parts', 0, 'part'], 'song', `Own part 1's part must be "paragraph", "tip" or "photo"; the file has "song".`],
    ['a part in no section', ['parts', 0, 'section'], 'index', `Own part 1's section must be the name of a section, like "materials"`],
    ['a part that fills in a length', ['parts', 0, 'text'], '{length 1/0 in}', 'Own part 1 has a curly bracket'],
    ['a part of two lines', ['parts', 0, 'text'], 'a\nb', 'Own part 1 holds characters that cannot be printed'],
    ['a part without a text', ['parts', 0, 'text'], undefined, 'Own part 1 has no "text"; add it'],
    ['words that fill in a length', ['words', 0, 'now'], 'Sew {bare 1/0 in}.', 'Own words 1 has a curly bracket'],
    ['words for a place without end', ['words', 0, 'at'], 'x'.repeat(401), "Own words 1's place is 401 characters long; shorten it to at most 400"],
    ['words in a language of words', ['words', 0, 'language'], 'English', `Own words 1's language must be the tag of a language, like "en" or "de"; this one is "English".`],
    ['words for one sentence twice', ['words', 1], publication.words![0], 'Own words 1 and 2 are for the same sentence'],
    ['a section listed twice', ['sections', 1, 'section'], 'units', 'The section "units" is listed twice'],
    ['a section half shown', ['sections', 1, 'shown'], 'half', "Section 2's shown must be true or false"],
    ['a subtitle that is a number', ['subtitle'], 7, 'The subtitle must be text in quotes; the file has 7.'],
    ['a subtitle without end', ['subtitle'], 'x'.repeat(201), 'The subtitle is 201 characters long; shorten it to at most 200'],
    ['something unknown', ['foot'], 'x', 'What is published has "foot", which this version does not know'],
  ])('is refused with %s', (_, path, value, sentence) => {
    expect(said(parseBlock(fileWith(path, value)))).toContain(sentence);
  });

  it('is not taken by a file that breaks off in the middle of a picture', () => {
    const whole = fileWith(['pictures', 0, 'jpeg'], 'A'.repeat(1_400_000));
    expect(said(parseBlock(whole.slice(0, -1)))).toContain('it ends on line 1 before it is complete');
    expect(said(parseBlock(whole.slice(0, -20_000)))).toContain('The file is not JSON');
  });
});

describe('the file of a house style', () => {
  it('is read back as it was written', () => {
    expect(must(parseHouseStyle(formatHouseStyle(style)))).toEqual(style);
    expect(must(parseHouseStyle(formatHouseStyle(usualStyle('in'))))).toEqual(usualStyle('in'));
  });

  it.each<readonly [string, readonly (string | number)[], unknown, string]>([
    ['a block', ['format'], 'piecewright/block', `The file's format is "piecewright/block"; open one whose format is "piecewright/house-style".`],
    ['nothing that says what it is', ['format'], undefined, 'The file does not say that it is a house style'],
    ['a later one', ['version'], 2, 'open it with a newer Piecewright'],
    ['a paper that is not known', ['paper'], 'legal', 'The paper of the house style must be one of those that the schema of a house style lists; the file has "legal".'],
    ['three columns', ['columns'], 3, 'The columns of the house style must be one of'],
    ['no language', ['language'], undefined, 'The house style has no "language"; add it, like "language": "en".'],
    ['a broken logo', ['logo', 'jpeg'], 'A', 'The logo is not written in base 64'],
    ['a logo without a width', ['logo', 'width'], undefined, `The logo of the house style has no "width"`],
    ['a foot of two lines', ['foot'], 'a\u2028b', "The page's foot holds characters that cannot be printed"],
    ['a maker in braces', ['maker'], '{count 1}', "The maker's name has a curly bracket"],
    ['a section twice', ['sections', 1], { section: 'notes', shown: true }, 'The section "notes" is listed twice'],
  ])('is refused where it is %s', (_, path, value, sentence) => {
    expect(said(parseHouseStyle(styleWith(path, value)))).toContain(sentence);
  });

  it('is refused where it is no JSON, or far too long', () => {
    expect(said(parseHouseStyle('{ "format": '))).toContain('The file is not JSON');
    expect(said(parseHouseStyle(' '.repeat(3_000_000)))).toBe('The file is 3 MB long, and a house style has at most 2 MB; choose another file.');
  });
});
