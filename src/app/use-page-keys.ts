import { useEffect } from 'react';
import { pageVerb, type PageVerb } from './page-keys.ts';

/** @returns whether keys typed into an element belong to its text */
function takesText(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !['radio', 'checkbox', 'color', 'file', 'button'].includes(target.type);
  return target.isContentEditable || target instanceof HTMLTextAreaElement;
}

/** Keys that mean the whole page also while a text is being typed, which is taken first. */
const EVEN_WHILE_TYPING: ReadonlySet<PageVerb> = new Set<PageVerb>(['save', 'save a copy', 'open']);

/** Does what the page's keys ask for; while a sheet lies over the page, they rest. */
export function usePageKeys(deeds: Readonly<Record<PageVerb, () => void>>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const verb = pageVerb(event);
      if (!verb) return;
      const covered = document.querySelector('dialog:modal') !== null;
      if (takesText(event.target)) {
        if (!EVEN_WHILE_TYPING.has(verb)) return;
        if (!covered) (event.target as HTMLElement).blur();
      }
      event.preventDefault();
      if (!covered) deeds[verb]();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [deeds]);
}
