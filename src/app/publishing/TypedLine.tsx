import { useId, useState, type ReactNode } from 'react';

/** A line or a few that are typed; taken when the hand goes on, or with Enter. */
export function TypedLine({ words, value, most, rows = 1, take, hint }: {
  readonly words: string;
  readonly value: string;
  /** Most characters. */
  readonly most: number;
  readonly rows?: number;
  /** @returns why it cannot be taken, in one sentence; null where it is */
  readonly take: (text: string) => string | null;
  readonly hint?: string;
}): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const id = useId();
  const done = (): void => {
    if (typed === null) return;
    const fault = typed === value ? null : take(typed);
    setProblem(fault);
    if (fault === null) setTyped(null);
  };
  const shared = {
    id,
    value: typed ?? value,
    maxLength: most,
    'aria-invalid': problem !== null || undefined,
    'aria-describedby': problem !== null ? `${id}-problem` : hint === undefined ? undefined : `${id}-hint`,
    onChange: (event: { readonly target: { readonly value: string } }): void => setTyped(event.target.value),
    onBlur: done,
    onKeyDown: (event: { readonly key: string; readonly shiftKey: boolean; readonly preventDefault: () => void }): void => {
      if (event.key === 'Escape' && typed !== null) {
        event.preventDefault();
        setTyped(null);
        setProblem(null);
      } else if (event.key === 'Enter' && !event.shiftKey) {
        event.preventDefault();
        done();
      }
    },
  };
  return (
    <div className="field">
      <label htmlFor={id}>{words}</label>
      {rows === 1 ? <input type="text" {...shared} /> : <textarea rows={rows} {...shared} />}
      {hint !== undefined && (
        <p id={`${id}-hint`} className="quiet room-hint">
          {hint}
        </p>
      )}
      {problem !== null && (
        <p id={`${id}-problem`} className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
