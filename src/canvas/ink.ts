/** The colours the table draws with, taken from the page so that light and dark are decided in one place. */
export interface InkColors {
  readonly ink: string;
  readonly quiet: string;
  readonly paper: string;
  readonly linen: string;
  readonly accent: string;
  /** The shadow of cloth on the table. */
  readonly shade: string;
}

/** @returns the colours that hold for an element now */
export function inkColorsOf(element: Element): InkColors {
  const style = getComputedStyle(element);
  const color = (name: string): string => style.getPropertyValue(name).trim() || '#777777';
  return {
    ink: color('--ink'),
    quiet: color('--ink-soft'),
    paper: color('--paper'),
    linen: color('--linen'),
    accent: color('--accent'),
    shade: color('--shade'),
  };
}
