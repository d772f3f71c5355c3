import { describe, expect, it } from 'vitest';
import { Readable } from 'node:stream';
import { run } from '../../src/cli/run.ts';

const STAR = new URL('../cases/sawtooth-star-12.block.json', import.meta.url).pathname;
const sizes = (...args: readonly string[]) => run(['sizes', STAR, ...args], Readable.from([]));

describe('piecewright sizes', () => {
  it('prints the sizes of a range with their marks and lists', async () => {
    // Elizabeth Hartman for Sew Mama Sew, 2009, studylib.net/doc/18178267/sawtooth-star-block: 6, 8 and 12 in.
    const { print, exit } = await sizes('--from', '6', '--to', '8', '--step', '1/2');
    expect(exit).toBe(0);
    expect(print.split('\n').filter((line) => /^(ON|UP|NO) +\d/.test(line)).map((line) => line.slice(0, 40).trim().replace(/ +/g, ' '))).toEqual([
      'ON 6 by 6 in. narrowest pie',
      'ON 6 1/2 by 6 1/2 in. narrowest pie',
      'ON 7 by 7 in. narrowest pie',
      'ON 7 1/2 by 7 1/2 in. narrowest pie',
      'ON 8 by 8 in. narrowest pie',
    ].map((line) => expect.stringContaining(line.split(' narrowest')[0]!)));
    for (const published of ['4 rectangles 2 by 3 1/2 in.', '1 square 3 1/2 in.', '4 rectangles 2 1/2 by 4 1/2 in.', '1 square 4 1/2 in.']) expect(print.replace(/\s+/g, ' ')).toContain(published);
  });

  it('prints them as data', async () => {
    const { print } = await sizes('--from', '6', '--to', '6 1/8', '--step', '1/8', '--ruler', '1/8', '--json');
    const data = JSON.parse(print) as { sizes: { finished: string[]; onTheRuler: boolean; betweenMarks: string[]; narrowest: string; cuts: { width: string }[]; fabrics: { buy: string }[] }[] };
    expect(data.sizes.map(({ finished, onTheRuler, betweenMarks, narrowest }) => ({ finished, onTheRuler, betweenMarks, narrowest }))).toEqual([
      { finished: ['6', '6'], onTheRuler: true, betweenMarks: [], narrowest: '1 1/2' },
      { finished: ['6 1/8', '6 1/8'], onTheRuler: false, betweenMarks: ['2 1/32', '3 9/16'], narrowest: '1 17/32' },
    ]);
    expect(data.sizes[1]!.cuts.map(({ width }) => width)).toContain('2 1/8');
    expect(data.sizes[0]!.fabrics.map(({ buy }) => buy)).toEqual(['1/8 yd', '1/8 yd']);
  });

  it.each([
    [['--from', 'far'], '--from: “far” is not a length: write it like 6 1/2, 6.5 or 16,5 cm.'],
    [['--step', '5 mm'], '--step: the block is measured in inches, so write this length in inches too.'],
    [['--from', '18', '--to', '6'], 'From 18 in. to 6 in. there are no sizes: begin with the smaller one.'],
    [['--step', '0'], 'A step of 0 in. leads nowhere: choose one above 0, like 1/4 in.'],
    [['--to', '500'], 'The finished width must be more than 0 and at most 200 in.; this one is 500.'],
    [['--from', '1', '--to', '100', '--step', '1/16'], 'From 1 in. to 100 in. in steps of 1/16 in. there are more than 400 sizes: take larger steps or fewer sizes.'],
  ])('says in one sentence what is wrong: %j', async (args, complaint) => {
    expect(await sizes(...args)).toEqual({ print: '', complaint, exit: 2 });
  });

  it('alone has a range', async () => {
    expect(await run(['plan', STAR, '--step', '1/2'], Readable.from([]))).toMatchObject({ complaint: 'The option --step goes with sizes, not with plan.', exit: 2 });
  });
});
