import { lazy, type CSSProperties, type ReactNode } from 'react';
import type { Fabric } from '../../block/block.ts';
import type { Choices } from '../../block/choices.ts';
import type { Cut } from '../../cutting/cut.ts';
import { equals } from '../../measure/rational.ts';
import { several } from '../../measure/words.ts';
import { ABOUT_CUTTING } from '../../pattern/cautions.ts';
import type { Cloth, Pattern } from '../../pattern/pattern.ts';
import type { ClothState } from '../cloths.ts';
import { Later } from '../Later.tsx';
import { useStore } from '../store.ts';
import type { Acts } from '../table.ts';
import { Area, Length, Prose } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';
import { Cautions } from './Notes.tsx';
import { takesWords } from './takes-words.ts';
import { TemplatesButton } from './TemplatesButton.tsx';
import { unfold, unfolded } from './unfolded.ts';

const ClothDetails = lazy(() => import('./cloth/ClothDetails.tsx'));
const RoundedUp = lazy(() => import('./RoundedUp.tsx'));
const Directions = lazy(() => import('./Directions.tsx'));
const Scraps = lazy(() => import('./Scraps.tsx'));
const ClothRules = lazy(() => import('./cloth/ClothRules.tsx'));

const SHAPES: Readonly<Record<Cut['shape'], readonly [string, string]>> = {
  square: ['square', 'squares'],
  rectangle: ['rectangle', 'rectangles'],
  template: ['piece', 'pieces'],
};

const STRIPS = ['strip', 'strips'] as const;

const SUBCUTS: Readonly<Record<Cut['subcut'], string>> = {
  none: '',
  once: 'cut once on the diagonal',
  twice: 'cut twice on the diagonals',
  'head to tail': 'cut into triangles, head to tail',
};

/** @returns "for A and B", "for the block": where the pieces of a line go */
function whereTo(cut: Cut): string {
  const places = [...new Set(cut.uses.map((use) => (use.unit === 'block' ? 'the block' : use.unit)))];
  const last = places.pop();
  if (last === undefined) return '';
  return places.length === 0 ? `for ${last}` : `for ${places.join(', ')} and ${last}`;
}

/** What unfolds below a fabric: where it is cut from, and how it is laid out; the names by which the sheet knows that. */
const sourceOf = ({ fabric }: Cloth): string => `source of ${fabric.id}`;
const layoutOf = ({ fabric }: Cloth): string => `layout of ${fabric.id}`;

/** Whether a line is cut larger than it need be, for want of a mark. */
const isRounded = ({ exact, width, height }: Cut): boolean =>
  exact !== null && !([[exact.width, width], [exact.height, height]] as const).every(([side, cut]) => side.r === 0 && equals(side.p, cut));

/** @returns "2 from the top left and 2 from the bottom left": along which diagonals rectangles are cut whose halves are mirror images */
const handsOf = ({ falling, rising }: NonNullable<Cut['diagonals']>): string =>
  ([[falling, 'top'], [rising, 'bottom']] as const).flatMap(([count, side]) => (count === 0 ? [] : [`${count} from the ${side} left`])).join(' and ');

/** What to cut, fabric by fabric: how much of it to buy, and how it is laid out. */
export function Cutting({ pattern, choices, states, letters, acts: { choose, change, alarm } }: {
  readonly pattern: Pattern;
  /** What is chosen now, which the pattern may not know yet. */
  readonly choices: Required<Choices>;
  /** How the layout of each fabric stands, by its id. */
  readonly states: ReadonlyMap<string, ClothState>;
  readonly letters: ReadonlyMap<string, string>;
  readonly acts: Pick<Acts, 'choose' | 'change' | 'alarm'>;
}): ReactNode {
  const { unit } = pattern.block;
  const layouts = pattern.fabrics.map(layoutOf);
  const shown = useStore(unfolded, (now) => layouts.every((name) => now.has(name)));
  const rounded = useStore(unfolded, (now) => now.has('rounded up')) && pattern.cuts.some(isRounded);
  const rules = useStore(unfolded, (now) => now.has('cloth rules'));
  const failed = (): void => alarm('That part of the sheet could not be fetched; check that the app is still being served, then load the page again.');
  return (
    <section aria-labelledby="cutting-title" className="part">
      <div className="cutting-head">
        <h3 id="cutting-title">Cutting</h3>
        <Unfold names={['cloth rules']} open={rules}>
          Cloth and shop
        </Unfold>
        <Unfold names={layouts} open={shown}>
          All layouts
        </Unfold>
      </div>
      {rules && (
        <Later failed={failed}>
          <ClothRules choices={choices} unit={unit} choose={choose} />
        </Later>
      )}
      <div className="cloths">
        {pattern.fabrics.map((cloth) => (
          <ClothCard key={cloth.fabric.id} cloth={cloth} state={states.get(cloth.fabric.id)} pattern={pattern} choices={choices} letter={letters.get(cloth.fabric.id)} choose={choose} failed={failed} />
        ))}
        {pattern.scraps.map((fabric) => (
          <Card key={fabric.id} fabric={fabric} letter={letters.get(fabric.id)} pattern={pattern} buy={`scraps of ${several(fabric.scraps!.prints, 'print')}`}>
            <Later failed={failed}>
              <Scraps fabric={fabric} pattern={pattern} change={change} />
            </Later>
          </Card>
        ))}
      </div>
      {pattern.cuts.some(({ template }) => template !== null) && <TemplatesButton pattern={pattern} alarm={alarm} />}
      {pattern.cuts.some(isRounded) && (
        <p className="rounded-line">
          <Unfold names={['rounded up']} open={rounded}>
            Rounded up to the ruler
          </Unfold>
        </p>
      )}
      {rounded && (
        <Later failed={failed}>
          <RoundedUp pattern={pattern} />
        </Later>
      )}
      <Cautions said={pattern.cautions.slice(0, ABOUT_CUTTING)} title="Take care when cutting" />
    </section>
  );
}

/** A button that unfolds what comes after it. */
function Unfold({ names, open, children }: { readonly names: readonly string[]; readonly open: boolean; readonly children: ReactNode }): ReactNode {
  return (
    <button type="button" className="plain unfold" aria-expanded={open} onClick={() => unfold(names, !open)}>
      {children}
    </button>
  );
}

/** One fabric: what to buy, what to cut; unfolded, where it is cut from and how. */
function ClothCard({ cloth, state, pattern, choices, letter, choose, failed }: {
  readonly cloth: Cloth;
  readonly state: ClothState | undefined;
  readonly pattern: Pattern;
  readonly choices: Required<Choices>;
  readonly letter: string | undefined;
  readonly choose: Acts['choose'];
  readonly failed: () => void;
}): ReactNode {
  const { fabric, buy, strips } = cloth;
  const { unit } = pattern.block;
  const [source, layout] = [sourceOf(cloth), layoutOf(cloth)];
  const showsSource = useStore(unfolded, (now) => now.has(source));
  const showsLayout = useStore(unfolded, (now) => now.has(layout));
  return (
    <Card fabric={fabric} letter={letter} pattern={pattern} buy={<><span className="quiet">buy</span> <Prose text={buy} /></>} takes={takesWords(cloth, unit, state)}>
      {fabric.directional && (
        <Later failed={failed}>
          <Directions fabric={fabric} pattern={pattern} />
        </Later>
      )}
      {strips.length > 0 && (
        <p className="quiet strips">
          From {strips.map((strip, i) => (
            <span key={i}>
              {i > 0 && ', '}
              {strip.count} {strip.count === 1 ? 'strip' : 'strips'} <Length value={strip.width} unit={unit} />
            </span>
          ))} wide
        </p>
      )}
      <p className="cloth-acts">
        <Unfold names={[layout]} open={showsLayout}>
          Layout <span className="unseen">of {fabric.name}</span>
        </Unfold>
        <Unfold names={[source]} open={showsSource}>
          Cut from <span className="unseen">what: {fabric.name}</span>
        </Unfold>
      </p>
      {(showsSource || showsLayout) && (
        <Later failed={failed}>
          <ClothDetails cloth={cloth} pattern={pattern} choices={choices} choose={choose} source={showsSource} layout={showsLayout} />
        </Later>
      )}
    </Card>
  );
}

/** What every fabric has: its name, what to get of it, its lines of the cutting list. */
function Card({ fabric, letter, pattern, buy, takes, children }: {
  readonly fabric: Fabric;
  readonly letter: string | undefined;
  readonly pattern: Pattern;
  readonly buy: ReactNode;
  /** What its pieces take of that, in words. */
  readonly takes?: string;
  readonly children?: ReactNode;
}): ReactNode {
  return (
    <section className="cloth" aria-labelledby={`cloth-${fabric.id}`}>
      <h4 id={`cloth-${fabric.id}`} className="cloth-name">
        <span className="chip" style={{ '--cloth': fabric.color } as CSSProperties} aria-hidden="true">
          <span>{letter}</span>
        </span>
        {fabric.name}
      </h4>
      <p className="buy">{buy}</p>
      {takes && (
        <p className="quiet takes">
          <Prose text={takes} />
        </p>
      )}
      <ul className="cuts">
        {pattern.cuts
          .filter((cut) => cut.fabric === fabric.id)
          .map((cut) => (
            <CutLine key={cut.id} cut={cut} pattern={pattern} fabricName={fabric.name} />
          ))}
      </ul>
      {children}
    </section>
  );
}

function CutLine({ cut, pattern, fabricName }: { readonly cut: Cut; readonly pattern: Pattern; readonly fabricName: string }): ReactNode {
  const { unit } = pattern.block;
  const [one, many] = cut.set ? STRIPS : SHAPES[cut.shape];
  const name = cut.quantity === 1 ? one : many;
  return (
    <Line name={`cut ${cut.id}`} className="cut">
      <Lamp name={`cut ${cut.id}`} says={`${cut.quantity} ${name} of ${fabricName}: show in the drawing`} className="quantity">
        {cut.quantity}
      </Lamp>
      <p className="cut-words">
        <span className="shape">{name}</span>{' '}
        <strong className="cut-size">
          {cut.shape === 'square' ? <Length value={cut.width} unit={unit} /> : <Area size={cut} unit={unit} />}
        </strong>
        {cut.shape === 'template' && <span className="sub">, from a template</span>}
        {cut.subcut !== 'none' && <span className="sub">, {SUBCUTS[cut.subcut]}</span>}
        {cut.set && <span className="sub">, for sets of {cut.set.segments} segments</span>}
        {cut.diagonals && <span className="sub">: {handsOf(cut.diagonals)}, standing on the short side</span>}
        {cut.spare > 0 && <span className="quiet spare"> · {cut.spare} spare</span>}
      </p>
      <p className="for">{whereTo(cut)}</p>
      <span className="line-badge">
        <span className="unseen">line </span>
        {cut.id}
      </span>
    </Line>
  );
}
