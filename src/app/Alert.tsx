import { X } from 'lucide-react';
import type { ReactNode } from 'react';

/** Where a sentence appears when something cannot be done; the drawing stays as it is. */
export function Alert({ sentence, dismiss }: { readonly sentence: string | null; readonly dismiss: () => void }): ReactNode {
  return (
    <div role="alert" className="alert-place">
      {sentence !== null && (
        <p className="alert">
          <span>{sentence}</span>
          <button type="button" className="plain" onClick={dismiss}>
            <X size={18} aria-hidden="true" /> Put away
          </button>
        </p>
      )}
    </div>
  );
}
