import { useDeferredValue, useEffect, useMemo, useState, type ReactNode } from 'react';
import { listed, several } from '../../../measure/words.ts';
import { settingIn } from '../../../pattern/pages/face.ts';
import { pageSvg } from '../../../pattern/pages/page-svg.ts';
import type { Page } from '../../../pattern/pages/page.ts';
import { PAPERS, type Paper } from '../../../pattern/pages/paper.ts';
import { foundationPages } from '../../../pattern/pages/foundation-pages.ts';
import { templatePages } from '../../../pattern/pages/template-pages.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { fileNameOf } from '../../block-files.ts';
import { handOver } from '../../device-files.ts';
import { Dialog } from '../../Dialog.tsx';
import { FACES, showFaces } from './faces.ts';
import { PagePicture } from './PagePicture.tsx';
import '../../face/templates.css';

const PAPER_WORDS: Readonly<Record<Paper, string>> = { letter: 'Letter (8 1/2 by 11 in.)', a4: 'A4 (210 by 297 mm)' };

const setting = settingIn(FACES);

/** The templates of a pattern, page by page as they will be printed; saved as PDF, or a page as a drawing (SVG). */
export default function Templates({ pattern, what = 'templates', alarm, close }: {
  readonly pattern: Pattern;
  /** Foundations are printed in the same way. */
  readonly what?: 'templates' | 'foundations';
  readonly alarm: (sentence: string) => void;
  readonly close: () => void;
}): ReactNode {
  const [paper, setPaper] = useState<Paper>(pattern.block.unit === 'cm' ? 'a4' : 'letter');
  const [said, setSaid] = useState('');
  const [saving, setSaving] = useState(false);
  const laidFor = useDeferredValue(paper);
  const document = useMemo(() => (what === 'templates' ? templatePages : foundationPages)(pattern, laidFor, setting), [pattern, what, laidFor]);
  useEffect(() => {
    // Where the browser refuses the face, its own stands in on the screen; the paper has ours.
    showFaces().catch(() => undefined);
  }, []);
  const { pages } = document;
  const handed = (content: Blob, name: string): void => {
    handOver(content, name);
    setSaid(`${name} is among your downloads.`);
  };
  const savePdf = async (): Promise<void> => {
    setSaving(true);
    try {
      const { pagesPdf } = await import('../../../pattern/pages/page-pdf.ts');
      const bytes = await pagesPdf(document, FACES);
      handed(new Blob([bytes as BlobPart], { type: 'application/pdf' }), fileNameOf(pattern.block, `-${what}.pdf`));
    } catch {
      alarm('The PDF could not be made; check that the app is still being served, load the page again, and try once more.');
      close();
    }
    setSaving(false);
  };
  const saveSvg = (page: Page, i: number): void => {
    const ending = pages.length === 1 ? `-${what}.svg` : `-${what}-${i + 1}.svg`;
    handed(new Blob([pageSvg(page, `${document.title}, page ${i + 1}`, document.language)], { type: 'image/svg+xml' }), fileNameOf(pattern.block, ending));
  };
  return (
    <Dialog title={what === 'templates' ? 'Templates' : 'Foundations'} className="wide templates-sheet" close={close}>
      <div className="templates-acts">
        <label className="field">
          <span>Paper</span>
          <select value={paper} onChange={(event) => setPaper(event.target.value as Paper)}>
            {PAPERS.map((each) => (
              <option key={each} value={each}>
                {PAPER_WORDS[each]}
              </option>
            ))}
          </select>
        </label>
        <button type="button" className="main-act" disabled={saving || laidFor !== paper} onClick={() => void savePdf()}>
          Save PDF
        </button>
      </div>
      <p>
        {several(pages.length, 'page')} at full size. Print at actual size (100 %), and measure the squares on the paper before you cut.
      </p>
      <p className="quiet" role="status">
        {said}
      </p>
      <ol className="template-pages" aria-busy={laidFor !== paper}>
        {pages.map((page, i) => (
          <li key={i}>
            <PagePicture page={page} says={`Page ${i + 1}: ${namesOn(page)}`} />
            <p className="template-page-acts">
              <button type="button" className="plain" onClick={() => saveSvg(page, i)}>
                Save page {i + 1} as drawing (SVG)
              </button>
            </p>
          </li>
        ))}
      </ol>
    </Dialog>
  );
}

/** @returns which templates a page shows, in words */
function namesOn({ items }: Page): string {
  const names = items.flatMap((item) => (item.kind === 'path' && item.what.startsWith('cut line ') ? [item.what.slice('cut line '.length)] : []));
  return names[0]?.startsWith('foundation') ? listed([...new Set(names)]) : `${names.length === 1 ? 'template' : 'templates'} ${listed([...new Set(names)])}`;
}
