import type { Handling } from '../../canvas/hand/selecting.ts';

/** A key that, with Ctrl or Cmd, does something with patches while the hand holds the tool for it. */
export interface ChosenKey {
  readonly key: string;
  /** null where the browser makes it a copy, a cut or a paste, which come as such. */
  readonly handling: Handling | null;
  readonly does: string;
}

export const CHOSEN_KEYS: readonly ChosenKey[] = [
  { key: 'a', handling: { do: 'all' }, does: 'Choose every patch' },
  { key: 'd', handling: { do: 'twin' }, does: 'Lay the same beside them' },
  { key: 'c', handling: null, does: 'Copy' },
  { key: 'x', handling: null, does: 'Copy and take up' },
  { key: 'v', handling: null, does: 'Lay what was copied' },
];
