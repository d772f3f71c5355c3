import { useId, useLayoutEffect, useRef, type ReactNode } from 'react';

/** A sheet laid over the page; Escape puts it away, and the focus goes back to where it was. */
export function Dialog({ title, className = '', close, children }: {
  readonly title: string;
  readonly className?: string;
  readonly close: () => void;
  readonly children: ReactNode;
}): ReactNode {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // Before the page is drawn anew: only a sheet that still stands in it gives the focus back.
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={`sheetlet ${className}`}
      aria-labelledby={titleId}
      onClose={() => {
        if (!dialog.current?.open) close();
      }}
    >
      <div className="sheet-top">
        <h2 id={titleId}>{title}</h2>
        <button type="button" className="plain" onClick={close}>
          Close
        </button>
      </div>
      {children}
    </dialog>
  );
}
