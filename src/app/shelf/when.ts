const DAY = 24 * 60 * 60 * 1000;

const startOfDay = (time: number): number => new Date(time).setHours(0, 0, 0, 0);

/** @returns "today, 14:05", "yesterday, 9:30", "3 Nov" or "3 Nov 2025", as this device writes dates; both times in milliseconds since 1970 */
export function whenInWords(time: number, now: number): string {
  const at = new Date(time);
  const clock = at.toLocaleTimeString(undefined, { hour: 'numeric', minute: '2-digit' });
  // Days of 23 or 25 hours are rounded to one.
  const days = Math.round((startOfDay(now) - startOfDay(time)) / DAY);
  if (days <= 0) return `today, ${clock}`;
  if (days === 1) return `yesterday, ${clock}`;
  const sameYear = at.getFullYear() === new Date(now).getFullYear();
  return at.toLocaleDateString(undefined, { day: 'numeric', month: 'short', ...(!sameYear && { year: 'numeric' }) });
}
