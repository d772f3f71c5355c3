import type { ReactNode } from 'react';
import { useStore } from '../store.ts';
import { show, shown, SHOWABLE } from './shown.ts';

/** What is drawn on the cloth, each on or off. */
export default function OnTheCloth(): ReactNode {
  const now = useStore(shown, (all) => all);
  return (
    <ul className="showables">
      {SHOWABLE.map(({ name, words, does }) => (
        <li key={name}>
          <label className="showable">
            <input type="checkbox" checked={now[name]} onChange={(event) => show(name, event.target.checked)} />
            <span>
              {words} <span className="quiet">{does}</span>
            </span>
          </label>
        </li>
      ))}
    </ul>
  );
}
