import { useEffect, useId, useRef, type ReactNode } from 'react';

/** A small sheet of questions laid over the table; Escape puts it away. */
export function Sheetlet({ title, doneWords, problem, done, close, children }: {
  readonly title: string;
  /** What the button says that answers it. */
  readonly doneWords: string;
  /** Why the answers cannot be taken yet. */
  readonly problem?: string | null;
  /** Called with the answers given; returns false to keep the sheet open. */
  readonly done: () => boolean | void;
  readonly close: () => void;
  readonly children: ReactNode;
}): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} className="sheetlet" aria-labelledby={titleId} onClose={close}>
      <form
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault();
          if (done() !== false) close();
        }}
      >
        <h2 id={titleId}>{title}</h2>
        {children}
        {problem && (
          <p className="sheetlet-problem" role="alert">
            {problem}
          </p>
        )}
        <div className="sheetlet-acts">
          <button type="button" className="plain" onClick={close}>
            Never mind
          </button>
          <button type="submit" className="main-act">
            {doneWords}
          </button>
        </div>
      </form>
    </dialog>
  );
}
