/** @returns the middle of some numbers, of two middle ones their mean; at least one number */
export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}

/** @returns the processor time of some runs, in milliseconds: other programs on the machine do not count in it */
export function processorTime(run: () => unknown, times = 1): number {
  const before = process.cpuUsage();
  for (let i = 0; i < times; i++) run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** @returns whether so much processor time is spent from now on: on a busy machine the clock on the wall would let too little be run */
export function spent(milliseconds: number): () => boolean {
  const before = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(before);
    return user + system >= 1000 * milliseconds;
  };
}

/** Medians of the processor time of one run, in milliseconds, and the median ratio of neighbouring runs. */
export interface Compared {
  readonly ours: number;
  readonly theirs: number;
  readonly ratio: number;
}

const ROUNDS = { least: 3, most: 9 };
/** Milliseconds; what is shorter is run several times over, so that the clock can tell. */
const MEASURABLE = 4;

/**
 * Runs two things in turn, so that both meet the machine in the same mood, once both are warm.
 * @param budget milliseconds of processor time after which no further round is begun, once there were three
 */
export function compared(ours: () => unknown, theirs: () => unknown, budget: number): Compared {
  const [isOver, isWarm] = [spent(budget), spent(budget / 4)];
  do [ours(), theirs()];
  while (!isWarm());
  const each = (run: () => unknown): (() => number) => {
    let times = 1;
    while (processorTime(run, times) < MEASURABLE) times *= 2;
    return () => processorTime(run, times) / times;
  };
  const [a, b] = [each(ours), each(theirs)];
  const rounds: { readonly ours: number; readonly theirs: number }[] = [];
  while (rounds.length < ROUNDS.least || (rounds.length < ROUNDS.most && !isOver())) {
    rounds.push({ ours: a(), theirs: b() });
  }
  return {
    ours: median(rounds.map((round) => round.ours)),
    theirs: median(rounds.map((round) => round.theirs)),
    ratio: median(rounds.map((round) => round.ours / round.theirs)),
  };
}
