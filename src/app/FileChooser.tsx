import type { ReactNode, RefObject } from 'react';

/** The browser's own way to choose a file, opened by a button that stands beside it; the same file can be chosen twice. */
export function FileChooser({ chooser, accept, label, take }: {
  readonly chooser: RefObject<HTMLInputElement | null>;
  readonly accept: string;
  readonly label: string;
  readonly take: (file: File) => void;
}): ReactNode {
  return (
    <input
      ref={chooser}
      type="file"
      accept={accept}
      className="unseen"
      tabIndex={-1}
      aria-label={label}
      onChange={(event) => {
        const file = event.target.files?.[0];
        event.target.value = '';
        if (file) take(file);
      }}
    />
  );
}
