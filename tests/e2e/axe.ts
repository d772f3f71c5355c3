import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';

/**
 * The rules of accessibility as they are asked of a page. Only what breaks a rule is gathered, and the page is looked at
 * as one frame, which takes less than half the time: there must be no other in it.
 * @returns axe for the whole page and all its rules; a test may ask for less
 * @throws where the page has a frame in it
 */
export function axe(page: Page): AxeBuilder {
  const frames = page.frames().length;
  if (frames !== 1) throw new Error(`the page is ${frames} frames, and axe would look at one`);
  return new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode();
}
