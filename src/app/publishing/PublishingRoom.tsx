import { PanelRight, Redo2, Undo2 } from 'lucide-react';
import { useCallback, useEffect, useId, useLayoutEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { addPart, type PartPlace } from '../../block/publishing.ts';
import type { Problem } from '../../measure/problem.ts';
import { several } from '../../measure/words.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { ClothState } from '../cloths.ts';
import { FileChooser } from '../FileChooser.tsx';
import { pageVerb } from '../page-keys.ts';
import { showFaces } from '../sheet/templates/faces.ts';
import { useStore } from '../store.ts';
import type { Acts } from '../table.ts';
import { AsidePanel } from './AsidePanel.tsx';
import { FilesPanel } from './FilesPanel.tsx';
import { houseStyle, keepStyle, styleFor } from './house-style-kept.ts';
import { MakerPanel } from './MakerPanel.tsx';
import { PagesInView } from './PagesInView.tsx';
import { PageView } from './PageView.tsx';
import { PartsPanel, type Begun } from './PartsPanel.tsx';
import { photoFrom } from './photo-files.ts';
import { SavePdf } from './SavePdf.tsx';
import { SectionsPanel } from './SectionsPanel.tsx';
import { PrintPanel, WordsPanel } from './StylePanel.tsx';
import { usePages } from './use-pages.ts';
import { useTelling } from './use-telling.ts';
import { useWording } from './use-wording.tsx';
import '../face/templates.css';
import '../face/publishing.css';

/** What the room is given of the page it is opened on. */
export interface RoomProps {
  readonly block: Block;
  /** The last pattern that was worked out; null where the drawing has none. */
  readonly pattern: Pattern | null;
  /** Whether that pattern is of an older drawing. */
  readonly working: boolean;
  /** Why the drawing has no pattern. */
  readonly problem: Problem | null;
  readonly clothStates: ReadonlyMap<string, ClothState>;
  readonly acts: Pick<Acts, 'change' | 'alarm' | 'undo' | 'redo'>;
  readonly close: () => void;
}

/** What is seen above a page that is gone to, in CSS pixels. */
const ABOVE = 10;
/** How large pages are shown. */
const SIZES = { wide: 'as wide as there is room', two: 'two side by side', true: 'true size' } as const;

/** The printed pattern, page by page as it will come out of the printer: looked through, put in her words, and saved. */
export default function PublishingRoom({ block, pattern, working, problem, clothStates, acts, close }: RoomProps): ReactNode {
  const { change } = acts;
  const chosenStyle = useStore(houseStyle, (all) => all);
  const { unit } = block.finished;
  const style = useMemo(() => styleFor(chosenStyle, unit), [chosenStyle, unit]);
  const [beside, setBeside] = useState(false);
  const [side, setSide] = useState<'pages' | 'choices'>('pages');
  const [size, setSize] = useState<keyof typeof SIZES>('wide');
  const [said, setSaid] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [begun, setBegun] = useState<Begun | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const handOn = useRef<HTMLElement | null>(null);
  const desk = useRef<HTMLDivElement>(null);
  const partsPlace = useRef<HTMLDetailsElement>(null);
  const photo = useRef<HTMLInputElement>(null);
  const photoAt = useRef<PartPlace>({ section: 'cover' });
  const titleId = useId();

  useLayoutEffect(() => {
    const shown = dialog.current!;
    if (beside) shown.show();
    else shown.showModal();
    // What is shown first is not Undo; and a hand stays where it was while the room moves.
    (handOn.current ?? heading.current)?.focus();
    return () => {
      const hand = document.activeElement;
      handOn.current = hand instanceof HTMLElement && shown.contains(hand) ? hand : null;
      shown.close();
    };
  }, [beside]);
  useEffect(() => {
    // Where the browser refuses the face, its own stands in on the screen; the paper has ours.
    showFaces().catch(() => undefined);
  }, []);

  const setStyle = useCallback((next: HouseStyle): void => setFault(keepStyle(next)), []);
  const { desk: pagesDesk, pages, late } = usePages(block, working ? null : pattern, style);
  const laid = problem ? null : pages.laid;
  const current = !working && !pages.busy && pages.of?.block === block && pages.of.pattern === pattern && pages.of.style === style;
  const goTo = (page: number, down: number): void => {
    setSide('pages');
    requestAnimationFrame(() => {
      const [pane, sheet] = [desk.current, desk.current?.querySelector(`[data-page="${page}"]`)];
      if (!pane || !sheet) return;
      const { top, height } = sheet.getBoundingClientRect();
      // Near the head of a page all of it is shown.
      pane.scrollTop += top - pane.getBoundingClientRect().top + (down < 0.2 ? 0 : height * (down - 0.05)) - ABOVE;
    });
  };
  const askForPhoto = (place: PartPlace): void => {
    photoAt.current = place;
    photo.current?.click();
  };
  const takePhoto = async (file: File): Promise<void> => {
    const { section, after } = photoAt.current;
    const read = await photoFrom(file, 'photo');
    if (!read.ok) return setFault(read.problem.sentence);
    const part = { section, ...(after !== undefined && { after }), part: 'photo', text: '', picture: read.value } as const;
    const made = addPart(block, part);
    setFault(made.ok ? null : made.problem.sentence);
    if (made.ok) change('added a photo', (now) => addPart(now, part));
  };
  const begin = (part: 'paragraph' | 'tip' | 'photo', place: PartPlace): void => {
    if (part === 'photo') return askForPhoto(place);
    setSide('choices');
    setBegun({ part, ...place });
    if (partsPlace.current) partsPlace.current.open = true;
  };
  const telling = useTelling(pattern, style);
  const { open, editor, chosen, page: worked } = useWording({ block, style, telling, laid, change, setStyle, begin });
  const words = block.publication?.words;
  const aside = useMemo(
    () => (words ?? []).filter((own) => laid?.aside.some(({ at, was, now }) => own.at === at && own.was === was && own.now === now)),
    [words, laid?.aside],
  );
  const count = laid?.document.pages.length ?? 0;
  const sentences = laid?.sentences;
  const drawnPage = useCallback(
    (page: NonNullable<typeof laid>['document']['pages'][number], i: number): ReactNode => (
      <PageView
        page={page}
        number={i + 1}
        of={count}
        sentences={sentences!}
        open={open}
        chosen={worked === i + 1 ? chosen : null}
        editor={worked === i + 1 ? editor : null}
      />
    ),
    [count, sentences, open, worked, chosen, editor],
  );

  return (
    <dialog
      ref={dialog}
      className="room"
      data-beside={beside || undefined}
      aria-labelledby={titleId}
      onClose={() => {
        if (!dialog.current?.open) close();
      }}
      onKeyDown={(event) => {
        // Over the whole window the page's own keys rest.
        const typing = event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement;
        const verb = beside || typing ? null : pageVerb(event);
        if (verb !== 'undo' && verb !== 'redo') return;
        event.preventDefault();
        acts[verb]();
      }}
    >
      <header className="room-top">
        <h2 id={titleId} ref={heading} tabIndex={-1}>
          <span className="quiet">Publish</span> {block.name}
        </h2>
        <div className="room-top-acts">
          <button type="button" className="plain" onClick={acts.undo}>
            <Undo2 size={20} aria-hidden="true" /> Undo
          </button>
          <button type="button" className="plain" onClick={acts.redo}>
            <Redo2 size={20} aria-hidden="true" /> Redo
          </button>
          <button type="button" className="plain room-beside" aria-pressed={beside} onClick={() => setBeside(!beside)}>
            <PanelRight size={20} aria-hidden="true" /> Beside the table
          </button>
          <button type="button" className="plain" onClick={close}>
            Close
          </button>
        </div>
      </header>
      <div className="room-sides" role="group" aria-label="Show">
        {(['pages', 'choices'] as const).map((each) => (
          <button key={each} type="button" className="plain framed" aria-pressed={side === each} onClick={() => setSide(each)}>
            {each === 'pages' ? 'Pages' : 'Choices'}
          </button>
        ))}
      </div>
      <div className="room-body" data-side={side}>
        <div className="room-desk" ref={desk} data-size={size} data-late={late || undefined}>
          <div className="room-desk-top">
            <p role="status" className="room-count">
              {late ? 'laying out the pages …' : laid ? several(count, 'page') : ''}
            </p>
            <label className="room-size">
              Shown{' '}
              <select value={size} onChange={(event) => setSize(event.target.value as keyof typeof SIZES)}>
                {Object.entries(SIZES).map(([each, words]) => (
                  <option key={each} value={each}>
                    {words}
                  </option>
                ))}
              </select>
            </label>
          </div>
          {problem && (
            <p className="sheet-problem" role="alert">
              {problem.sentence}
            </p>
          )}
          {pages.failed && !problem && (
            <p className="sheet-problem" role="alert">
              These pages could not be laid out; the drawing is safe: change it a little, or undo, to try again.
            </p>
          )}
          {laid && (
            <PagesInView pages={laid.document.pages} worked={worked === null ? null : worked - 1}>
              {drawnPage}
            </PagesInView>
          )}
        </div>
        <div className="room-choices">
          <SavePdf
            block={block}
            pattern={pattern}
            laid={laid}
            current={current}
            clothStates={clothStates}
            desk={pagesDesk}
            said={said}
            say={setSaid}
            alarm={setFault}
          />
          {fault !== null && (
            <p className="sheetlet-problem" role="alert">
              {fault}
            </p>
          )}
          <FileChooser chooser={photo} accept="image/*" label="Choose a photo" take={(file) => void takePhoto(file)} />
          {laid && aside.length > 0 && (
            <Part title={`Set aside (${aside.length})`} open>
              <AsidePanel words={aside} sentences={laid.sentences} telling={telling} change={change} />
            </Part>
          )}
          <Part title="What it holds" open>
            <SectionsPanel block={block} style={style} laid={laid?.sections ?? []} change={change} setStyle={setStyle} goTo={goTo} />
          </Part>
          <Part title="Paper and ink" open>
            <PrintPanel style={style} setStyle={setStyle} />
          </Part>
          <Part title="Words and signs">
            <WordsPanel style={style} setStyle={setStyle} />
          </Part>
          <Part title="Whose it is">
            <MakerPanel block={block} style={style} change={change} setStyle={setStyle} say={setSaid} />
          </Part>
          <details ref={partsPlace}>
            <summary>Your own parts{block.publication?.parts ? ` (${block.publication.parts.length})` : ''}</summary>
            <PartsPanel
              block={block}
              laid={laid?.sections ?? []}
              change={change}
              begun={begun}
              begin={setBegun}
              askForPhoto={askForPhoto}
            />
          </details>
          <Part title="Other files">
            <FilesPanel block={block} desk={pagesDesk} say={setSaid} alarm={(sentence) => setFault(sentence)} />
          </Part>
        </div>
      </div>
    </dialog>
  );
}

/** A part of the choices that can be folded away. */
function Part({ title, open: first = false, children }: {
  readonly title: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <details open={first}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}
