import type { Pinned } from '../geometry/piecing/pins.ts';
import type { Speech, Wording } from './language.ts';
import type { RefusedPin } from './pattern.ts';

/** @returns a pin that is not honoured, with the reason in words */
export const refusedPin = ({ pin, why }: Pinned['refused'][number], { language }: Speech<Wording>): RefusedPin => ({
  pin,
  why,
  says: language.pattern.refused[why],
});

/** @returns the whole sentence about a pin that is not honoured, where the pin is not beside it */
export const refusedPinText = ({ pin, says }: RefusedPin, { language, telling }: Speech): string =>
  language.pattern.refusedPin(telling.count(pin + 1), says);
