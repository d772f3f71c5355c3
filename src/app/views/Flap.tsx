import { useEffect, useId, useRef, type ReactNode } from 'react';

/** A button under the table that opens a small flap above itself; Escape, or a press elsewhere, closes it. */
export function Flap({ name, icon, words, hint, pressed, open, setOpen, children }: {
  readonly name: string;
  readonly icon: ReactNode;
  readonly words: string;
  readonly hint?: string;
  /** Whether something in the flap is on. */
  readonly pressed: boolean;
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
  readonly children: ReactNode;
}): ReactNode {
  const flap = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  useEffect(() => {
    if (!open) return;
    const press = (event: PointerEvent): void => {
      const at = event.target as Node;
      if (!flap.current?.contains(at) && !button.current?.contains(at)) setOpen(false);
    };
    document.addEventListener('pointerdown', press, true);
    return () => document.removeEventListener('pointerdown', press, true);
  }, [open, setOpen]);
  return (
    <div
      className={`flap-place flap-${name}`}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !open) return;
        event.stopPropagation();
        setOpen(false);
        button.current?.focus();
      }}
    >
      <button
        ref={button}
        type="button"
        className="plain view-act"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        data-on={pressed || undefined}
        title={hint}
        onClick={() => setOpen(!open)}
      >
        {icon} <span className="view-words">{words}</span>
      </button>
      {open && (
        <div ref={flap} id={id} className="flap" role="group" aria-label={words}>
          {children}
        </div>
      )}
    </div>
  );
}
