import { useEffect } from 'react';
import type { Acts } from './table.ts';

/** @returns whether keys typed into an element belong to its text */
function takesText(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !['radio', 'checkbox', 'color', 'file', 'button'].includes(target.type);
  return target.isContentEditable || target instanceof HTMLTextAreaElement;
}

/** Ctrl or Cmd with Z undoes, with Shift+Z or Y does again, wherever no text is being typed. */
export function useUndoKeys({ undo, redo }: Pick<Acts, 'undo' | 'redo'>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || takesText(event.target) || document.querySelector('dialog[open]')) return;
      const letter = event.key.toLowerCase();
      if (letter !== 'z' && letter !== 'y') return;
      event.preventDefault();
      if (letter === 'y' || event.shiftKey) redo();
      else undo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [undo, redo]);
}
