import { useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { mayTakeLess } from '../../pattern/relaid.ts';
import { fileNameOf } from '../block-files.ts';
import type { ClothState } from '../cloths.ts';
import { handOver } from '../device-files.ts';
import type { Laid } from './pages-maker.ts';
import type { PagesDesk } from './pages-desk.ts';

/** Saves the pages as PDF; what is wrong with the pattern is said first. */
export function SavePdf({ block, pattern, laid, current, clothStates, desk, said, say, alarm }: {
  readonly block: Block;
  readonly pattern: Pattern | null;
  readonly laid: Laid | null;
  /** Whether the pages are those of the drawing as it is. */
  readonly current: boolean;
  readonly clothStates: ReadonlyMap<string, ClothState>;
  readonly desk: PagesDesk;
  readonly said: string;
  readonly say: (words: string) => void;
  readonly alarm: (sentence: string | null) => void;
}): ReactNode {
  const [saving, setSaving] = useState(false);
  const save = async (): Promise<void> => {
    setSaving(true);
    alarm(null);
    try {
      const bytes = await desk.ask(async (at) => await at.pdf());
      const name = fileNameOf(block, '-pattern.pdf');
      handOver(new Blob([bytes as BlobPart], { type: 'application/pdf' }), name);
      say(`${name} is among your downloads.`);
    } catch {
      alarm('The PDF could not be made; check that the app is still being served, load the page again, and try once more.');
    }
    setSaving(false);
  };
  const settling = pattern !== null && stillCut(pattern, clothStates);
  return (
    <div className="room-save">
      {laid && laid.alarm !== null && (
        <p className="sheet-problem" role="alert">
          {laid.alarm} Every page says so.
        </p>
      )}
      {pattern && pattern.warnings.length > 0 && (
        <details className="room-warnings">
          <summary>
            {pattern.warnings.length === 1 ? 'One warning is printed with it' : `${pattern.warnings.length} warnings are printed with it`}
          </summary>
          <ul>
            {pattern.warnings.map(({ code, says }) => (
              <li key={code}>{says}</li>
            ))}
          </ul>
        </details>
      )}
      <button type="button" className="main-act" disabled={saving || !current || !laid} onClick={() => void save()}>
        {saving ? 'Saving …' : 'Save PDF'}
      </button>
      {settling && <p className="quiet">Layouts that take less cloth are still looked for; the pages follow.</p>}
      <p className="quiet" role="status">
        {said}
      </p>
    </div>
  );
}

/** @returns whether a better layout of a fabric may still come */
const stillCut = ({ fabrics }: Pattern, states: ReadonlyMap<string, ClothState>): boolean =>
  fabrics.some((cloth) => mayTakeLess(cloth) && !['proved', 'best known'].includes(states.get(cloth.fabric.id) ?? 'quick'));
