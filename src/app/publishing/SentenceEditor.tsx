import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import type { OwnPart } from '../../block/publication.ts';

/** What a sentence is worded in, beside the place where it stands. */
export function SentenceEditor({ typed, values, mine, keep, back, add, close }: {
  /** The sentence as it stands, its values in braces. */
  readonly typed: string;
  /** Whether there are values in it. */
  readonly values: boolean;
  /** Whether these are her words already. */
  readonly mine: boolean;
  /** Takes what was typed. @returns why it cannot be taken, in one sentence; null where it is */
  readonly keep: (text: string) => string | null;
  /** Puts the program's words there again; absent where there are none. */
  readonly back?: () => void;
  /** Begins a part of her own behind this sentence. */
  readonly add: (part: OwnPart['part']) => void;
  readonly close: () => void;
}): ReactNode {
  /** null as long as nothing was typed: then it follows the drawing. */
  const [draft, setDraft] = useState<string | null>(null);
  const text = draft ?? typed;
  const [problem, setProblem] = useState<string | null>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  useEffect(() => {
    field.current?.focus({ preventScroll: true });
    field.current?.closest('.room-editor')?.scrollIntoView({ block: 'nearest' });
  }, []);
  const done = (): void => {
    const fault = text === typed ? null : keep(text);
    if (fault === null) close();
    else setProblem(fault);
  };
  return (
    <form
      className="room-editor"
      aria-label="Word this sentence"
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') {
          // The room stays.
          event.preventDefault();
          event.stopPropagation();
          close();
        } else if (event.key === 'Enter' && (event.ctrlKey || event.metaKey || event.target === field.current) && !event.shiftKey) {
          event.preventDefault();
          done();
        }
      }}
    >
      <label className="field">
        <span>The sentence in your words</span>
        <textarea
          ref={field}
          rows={3}
          value={text}
          aria-describedby={id}
          aria-invalid={problem !== null || undefined}
          onChange={(event) => {
            setDraft(event.target.value);
            setProblem(null);
          }}
        />
      </label>
      <p id={id} className="quiet room-editor-hint">
        {values ? 'What stands in braces follows the drawing: keep it, move it, or leave it out. ' : ''}
        {mine ? 'These are your words.' : ''}
      </p>
      {problem && (
        <p className="sheetlet-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="room-editor-acts">
        <button type="submit" className="main-act">
          Keep
        </button>
        {mine && back && (
          <button type="button" className="plain framed" onClick={back}>
            Back to the program’s words
          </button>
        )}
        <button type="button" className="plain" onClick={close}>
          Never mind
        </button>
      </div>
      <div className="room-editor-acts room-editor-add" role="group" aria-label="Add below this sentence">
        <span className="quiet">Add below:</span>
        {(['paragraph', 'tip', 'photo'] as const).map((part) => (
          <button key={part} type="button" className="plain framed" onClick={() => add(part)}>
            {part === 'paragraph' ? 'a paragraph' : part === 'tip' ? 'a tip' : 'a photo'}
          </button>
        ))}
      </div>
    </form>
  );
}
