/** Minutes to which an estimate is rounded, from so many minutes on. */
const STEPS = [[600, 60], [60, 10], [20, 5], [0, 1]] as const;

/** @returns an estimate of time for people: "15 min", "2 h 10 min"; the longer the less exact, and never nothing */
export function aboutTime(seconds: number): string {
  const minutes = seconds / 60;
  const [, step] = STEPS.find(([from]) => minutes >= from) ?? STEPS[3];
  const near = Math.max(1, Math.round(minutes / step) * step);
  const [hours, rest] = [Math.floor(near / 60), near % 60];
  return [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 ? [`${rest} min`] : [])].join(' ');
}

/** @returns a time to the second, as a sum is told: "14 min 35 s", "0 s" */
export function secondsTime(seconds: number): string {
  const near = Math.round(seconds);
  const parts = [[Math.floor(near / 3600), 'h'], [Math.floor(near / 60) % 60, 'min'], [near % 60, 's']] as const;
  const said = parts.filter(([n]) => n > 0).map(([n, unit]) => `${n} ${unit}`);
  return said.length > 0 ? said.join(' ') : '0 s';
}
