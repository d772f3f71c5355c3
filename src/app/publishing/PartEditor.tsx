import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { MAX_SAID } from '../../block/limits.ts';

/** What a new paragraph or tip of hers is written in. */
export function PartEditor({ words, keep, close }: {
  /** What it is and where it will stand. */
  readonly words: string;
  /** Takes what was written. @returns why it cannot be taken, in one sentence; null where it is */
  readonly keep: (text: string) => string | null;
  readonly close: () => void;
}): ReactNode {
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  useEffect(() => {
    field.current?.focus();
    field.current?.scrollIntoView({ block: 'center' });
  }, []);
  return (
    <form
      className="room-part"
      onSubmit={(event) => {
        event.preventDefault();
        setProblem(keep(text));
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        // The room stays.
        event.preventDefault();
        event.stopPropagation();
        close();
      }}
    >
      <div className="field">
        <label htmlFor={id}>{words}</label>
        <textarea ref={field} id={id} rows={4} maxLength={MAX_SAID} value={text} onChange={(event) => {
          setText(event.target.value);
          setProblem(null);
        }} />
      </div>
      {problem !== null && (
        <p className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="room-acts">
        <button type="submit" className="main-act">
          Add it
        </button>
        <button type="button" className="plain" onClick={close}>
          Never mind
        </button>
      </div>
    </form>
  );
}
