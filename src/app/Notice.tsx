import { X } from 'lucide-react';
import { useEffect, type ReactNode } from 'react';
import { notice } from './notice.ts';
import { useStore } from './store.ts';

/** Where a quiet line says what was done. */
export function NoticeLine(): ReactNode {
  const now = useStore(notice, (all) => all);
  useEffect(() => {
    if (!now || now.stays === Infinity) return undefined;
    const over = setTimeout(() => notice.set(null), now.stays);
    return () => clearTimeout(over);
  }, [now]);
  return (
    <div className="notice-place" role="status">
      {now && (
        <p className="notice">
          <span>{now.words}</span>
          {now.act && (
            <button
              type="button"
              className="plain framed"
              onClick={() => {
                notice.set(null);
                now.act?.do();
              }}
            >
              {now.act.name}
            </button>
          )}
          <button type="button" className="plain" aria-label="Dismiss" onClick={() => notice.set(null)}>
            <X size={18} aria-hidden="true" />
          </button>
        </p>
      )}
    </div>
  );
}
