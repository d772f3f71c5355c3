import { useId, useState, type ReactNode } from 'react';
import type { Block, Fabric } from '../../block/block.ts';
import { valueOf, type Value } from '../../block/colour/lightness.ts';
import { setPhoto } from '../../block/colour/photos.ts';
import { addFabric, recolourFabric, renameFabric, setDirectional, setPrints, setValue } from '../../block/fabrics.ts';
import { MAX_NAME, PRINTS } from '../../block/limits.ts';
import { good, type Result } from '../../measure/problem.ts';
import { Sheetlet } from '../Sheetlet.tsx';
import type { Acts } from '../table.ts';
import { FabricActs } from './FabricActs.tsx';
import { freshId } from './fresh-id.ts';
import { PhotoField, type ChosenPhoto } from './PhotoField.tsx';
import { typedColour } from './typed-colour.ts';
import '../face/scraps.css';

/** What is asked about a fabric. */
interface Answers {
  readonly name: string;
  readonly color: string;
  readonly directional: boolean;
  /** Null where it is one cloth. */
  readonly prints: number | null;
  /** Null where it is that of its colour. */
  readonly value: Value | null;
  readonly photo: ChosenPhoto | null;
}

/** How many prints scraps have before anybody says how many. */
const USUAL_PRINTS = 4;

/** A new fabric, or (held) another name, colour or kind for one that there is. */
export default function FabricSheetlet({ block, held, acts, close }: {
  readonly block: Block;
  readonly held: Fabric | null;
  readonly acts: Acts;
  readonly close: () => void;
}): ReactNode {
  const [name, setName] = useState(held?.name ?? '');
  const [color, setColor] = useState(held?.color ?? '#7a9e9f');
  const [typed, setTyped] = useState('');
  const [value, setOwnValue] = useState<Value | null>(held?.value ?? null);
  const [photo, setPhotoChosen] = useState<ChosenPhoto | null>(held ? photoIn(block, held) : null);
  const [directional, setUpright] = useState(held?.directional ?? false);
  const [scraps, setScraps] = useState(held?.scraps !== undefined);
  const [prints, setMany] = useState(String(held?.scraps?.prints ?? USUAL_PRINTS));
  const [busy, setBusy] = useState(false);
  const hints = useId();
  const read = typed.trim() === '' ? null : typedColour(typed);
  const done = (): boolean | void => {
    if (busy || (read && !read.ok)) return false;
    const answers: Answers = { name: name.trim(), color: read ? read.value : color, directional, prints: scraps ? Number(prints) : null, value, photo };
    if (held) {
      acts.change(changeWords(held, answers), (now) => changed(now, { ...held, shown: photoIn(block, held) }, answers));
      return;
    }
    const id = freshId(block.fabrics);
    acts.change(`added ${answers.name}`, (now) => {
      const bare = { id, name: answers.name, color: answers.color, directional: false, prints: null };
      const added = addFabric(now, { id, name: answers.name, color: answers.color });
      return added.ok ? changed(added.value, bare, answers) : added;
    });
    acts.takeUpFabric(id);
  };
  return (
    <Sheetlet title={held ? `Change ${held.name}` : 'Add a fabric'} doneWords="Done" problem={read && !read.ok ? read.problem.sentence : null} close={close} done={done}>
      <label className="field">
        <span>Name</span>
        <input type="text" value={name} required maxLength={MAX_NAME} onChange={(event) => setName(event.target.value)} />
      </label>
      <label className="field">
        <span>Colour</span>
        <input
          type="color"
          value={read?.ok ? read.value : color}
          onChange={(event) => {
            setColor(event.target.value);
            setTyped('');
          }}
        />
      </label>
      <label className="field">
        <span>or typed</span>
        <input type="text" value={typed} maxLength={80} placeholder={color} autoComplete="off" spellCheck={false} onChange={(event) => setTyped(event.target.value)} />
      </label>
      <label className="field">
        <span>Value</span>
        <select value={value ?? ''} onChange={(event) => setOwnValue((event.target.value || null) as Value | null)}>
          <option value="">{`${valueOf(read?.ok ? read.value : color)}, by its colour`}</option>
          <option value="light">light</option>
          <option value="medium">medium</option>
          <option value="dark">dark</option>
        </select>
      </label>
      <PhotoField busy={setBusy} photo={photo} unit={block.finished.unit} choose={setPhotoChosen} takeColour={(taken) => { setColor(taken); setTyped(''); }} />
      <fieldset className="fabric-kind">
        <legend>Its print</legend>
        <label className="tick">
          <input type="checkbox" checked={directional} aria-describedby={`${hints}-up`} onChange={(event) => setUpright(event.target.checked)} />
          Has an up and a down
        </label>
        <p className="quiet" id={`${hints}-up`}>
          No piece of it is turned when it is cut.
        </p>
        <label className="tick">
          <input type="checkbox" checked={scraps} aria-describedby={`${hints}-scraps`} onChange={(event) => setScraps(event.target.checked)} />
          Stands for scraps of many prints
        </label>
        <p className="quiet" id={`${hints}-scraps`}>
          The sheet asks for pieces, not for yards, and keeps equal prints apart; each patch is a piece of its own.
        </p>
        {scraps && (
          <label className="field prints-field">
            <span>How many prints</span>
            <input type="number" required min={PRINTS.least} max={PRINTS.most} step={1} value={prints} onChange={(event) => setMany(event.target.value)} />
          </label>
        )}
      </fieldset>
      {held && <FabricActs block={block} held={held} acts={acts} close={close} />}
    </Sheetlet>
  );
}

type Before = Pick<Fabric, 'id' | 'name' | 'color' | 'directional' | 'value'> & { readonly scraps?: { readonly prints: number }; readonly shown?: ChosenPhoto | null };

/** @returns the block with what is answered otherwise about a fabric */
function changed(block: Block, before: Before, { name, color, directional, prints, value, photo }: Answers): Result<Block> {
  const { id } = before;
  const verbs: readonly ((now: Block) => Result<Block>)[] = [
    ...(name === before.name ? [] : [(now: Block) => renameFabric(now, id, name)]),
    ...(color === before.color ? [] : [(now: Block) => recolourFabric(now, id, color)]),
    ...(directional === (before.directional ?? false) ? [] : [(now: Block) => setDirectional(now, id, directional)]),
    ...(prints === (before.scraps?.prints ?? null) ? [] : [(now: Block) => setPrints(now, id, prints)]),
    ...(alike(photo, before.shown ?? null) ? [] : [(now: Block) => setPhoto(now, id, photo)]),
    ...(value === (before.value ?? null) ? [] : [(now: Block) => setValue(now, id, value)]),
  ];
  return verbs.reduce((now: Result<Block>, verb) => (now.ok ? verb(now.value) : now), good(block));
}

/** @returns the photo of a fabric with how much it shows; null where it has none */
function photoIn({ photos = [] }: Block, { photo }: Fabric): ChosenPhoto | null {
  const found = photos.find(({ id }) => id === photo?.picture);
  if (!found || !photo) return null;
  const { id: _, ...picture } = found;
  return { picture, across: photo.across };
}

const alike = (a: ChosenPhoto | null, b: ChosenPhoto | null): boolean =>
  a?.picture.jpeg === b?.picture.jpeg && a?.across.n === b?.across.n && a?.across.d === b?.across.d;

/** @returns what the history calls it: "made Gulls run one way", "made Gulls scraps of 4 prints", "changed Gulls" */
function changeWords(held: Fabric, { name, color, directional, prints, value }: Answers): string {
  const words = [
    ...(name === held.name && color === held.color ? [] : [`changed ${held.name}`]),
    ...(directional === (held.directional ?? false) ? [] : [directional ? `made ${held.name} run one way` : `let ${held.name} be turned`]),
    ...(prints === (held.scraps?.prints ?? null) ? [] : [prints === null ? `made ${held.name} one cloth` : `made ${held.name} scraps of ${prints} prints`]),
  ];
  if (value !== (held.value ?? null)) words.push(value === null ? `took the value of ${held.name} from its colour` : `called ${held.name} ${value}`);
  return words.length === 1 ? words[0]! : `changed ${held.name}`;
}
