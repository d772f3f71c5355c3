import type { Step } from '../../src/sewing/step.ts';
import { crossingsIn, seamsInBlock, type Crossing } from './seams-in-block.ts';

/* What the steps say of the points where seams meet, held against what is found in the finished block. */

type Lie = Crossing['lie'];
const LIES: readonly Lie[] = ['opposite ways', 'the same way', 'open'];

/** @returns the points where seams meet in one copy of what a step makes, each with how its seams lie, as found in the finished block */
function pointsFound(crossings: readonly Crossing[], step: Step): readonly Lie[] {
  const here = crossings.filter(({ across }) => across.step === step.number);
  // Every copy of a unit is the same; the first one speaks for all.
  const first = here.filter(({ across }) => across.place === here[0]!.across.place);
  const points = new Map<string, Lie[]>();
  for (const { across, at, lie } of first) points.set(`${across.join} ${at}`, [...(points.get(`${across.join} ${at}`) ?? []), lie]);
  return [...points.values()].map((lies) => (['the same way', 'opposite ways', 'open'] as const).find((lie) => lies.includes(lie))!);
}

const manyOf = (lies: readonly Lie[]): readonly number[] => LIES.map((each) => lies.filter((lie) => lie === each).length);

/** @returns how many points a step's sentences tell of, by how they lie; null where they tell of none */
function told({ how }: Step): { readonly apart: number | 'all'; readonly open: number | 'all'; readonly of: number | null } | null {
  if (/seams nested/.test(how)) return { apart: 0, open: 0, of: null };
  const said = / (?:Nest|Match) the seams where they meet(?:; (.*?), so pin (?:there|them))?\.(?: |$)/.exec(how);
  if (!said) return null;
  const rest = said[1] ?? '';
  const many = (what: string): number | 'all' => {
    if (rest.includes(`there they ${what}`)) return 'all';
    const some = new RegExp(`at (\\d+) of the \\d+ places \\([^()]*\\) two ${what}`).exec(rest);
    return some ? Number(some[1]) : 0;
  };
  const of = / of the (\d+) places/.exec(rest);
  return { apart: many('lie the same way'), open: many('do not nest, for one lies open'), of: of ? Number(of[1]) : null };
}

/** @returns the steps whose points, or whose words about them, are not what is found in the block */
export function untrueOf(steps: readonly Step[]): readonly string[] {
  const crossings = crossingsIn(seamsInBlock(steps));
  return steps.flatMap((step) => {
    const found = manyOf(pointsFound(crossings, step));
    const listed = manyOf(step.points.map(({ lie }) => lie));
    const all = found.reduce((a, b) => a + b);
    const said = told(step);
    const number = (many: number | 'all'): number => (many === 'all' ? all : many);
    const says = said && [all - number(said.apart) - number(said.open), number(said.apart), number(said.open)];
    const wrong = says === null ? all > 0 : all === 0 || says.join() !== found.join() || (said!.of !== null && said!.of !== all);
    return [
      ...(listed.join() === found.join() ? [] : [`step ${step.number} lists ${listed.join()}, but ${found.join()} are there`]),
      ...(wrong ? [`step ${step.number} tells of ${says?.join() ?? 'nothing'}, but ${found.join()} are there: ${step.how}`] : []),
    ];
  });
}
