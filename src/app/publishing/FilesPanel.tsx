import { useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { fileNameOf } from '../block-files.ts';
import { handOver } from '../device-files.ts';
import type { PagesDesk } from './pages-desk.ts';
import { FILES, type FileKind } from './room-files.ts';

/** The same pattern for her own layout, for a table of figures, for other programs and for cutting machines. */
export function FilesPanel({ block, desk, say, alarm }: {
  readonly block: Block;
  readonly desk: PagesDesk;
  readonly say: (words: string) => void;
  readonly alarm: (sentence: string) => void;
}): ReactNode {
  const [making, setMaking] = useState<FileKind | null>(null);
  const save = async (kind: FileKind): Promise<void> => {
    const { ending, type } = FILES[kind];
    setMaking(kind);
    try {
      const made = await desk.ask(async (at) => await at.file(kind));
      if (made.ok) {
        handOver(new Blob([made.value as BlobPart], { type }), fileNameOf(block, ending));
        say(`${fileNameOf(block, ending)} is among your downloads.`);
      } else alarm(made.problem.sentence);
    } catch {
      alarm('The file could not be made; load the page again and try once more.');
    }
    setMaking(null);
  };
  return (
    <ul className="room-files">
      {(Object.keys(FILES) as FileKind[]).map((kind) => (
        <li key={kind}>
          <button type="button" className="plain framed" disabled={making !== null} onClick={() => void save(kind)}>
            {FILES[kind].words}
          </button>
          <span className="quiet">{making === kind ? 'is being made …' : FILES[kind].what}</span>
        </li>
      ))}
    </ul>
  );
}
