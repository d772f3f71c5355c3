import { useMemo, type ReactNode } from 'react';
import { Dialog } from './Dialog.tsx';
import { keyGroups } from './key-words.ts';

/** Every key and what it does. */
export function KeysDialog({ close }: { readonly close: () => void }): ReactNode {
  const groups = useMemo(() => keyGroups(/Mac|iPhone|iPad/.test(navigator.platform)), []);
  return (
    <Dialog title="Keys" className="wide" close={close}>
      <p className="quiet">The keys of the table and its tools work once the drawing has the focus: click it, or come to it with Tab.</p>
      <div className="key-groups">
        {groups.map(({ title, lines }) => (
          <section key={title} className="key-group">
            <h3>{title}</h3>
            <dl>
              {lines.map(({ keys, does }) => (
                <div key={does} className="key-line">
                  <dt>
                    {keys.map((key) => (
                      <kbd key={key}>{key}</kbd>
                    ))}
                  </dt>
                  <dd>{does}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  );
}
