import { useId, useRef, useState, type ReactNode } from 'react';
import type { Grid, LengthUnit } from '../../block/block.ts';
import { chooseMethod, type MethodWish } from '../../block/choosing-methods.ts';
import { linesOfKind, type Effect, type MethodOption, type MethodScope } from '../../pattern/effects.ts';
import { compare, subtract } from '../../measure/rational.ts';
import { several } from '../../measure/words.ts';
import type { Pattern, UnitLine } from '../../pattern/pattern.ts';
import { unitPlaces } from '../../pattern/unit-places.ts';
import { methodWords } from '../past/method-words.ts';
import { METHOD_WORDS } from '../past/words.ts';
import type { Acts } from '../table.ts';
import { Length } from './Length.tsx';
import { useEffects, type Offered } from './use-effects.ts';
import '../face/methods.css';

const SCOPES: readonly MethodScope[] = ['unit', 'kind', 'pattern'];

/** How a unit can be cut and sewn, what each way takes and what it changes, and for which units it is chosen. */
export default function MethodChooser({ line, pattern, grid, change }: {
  readonly line: UnitLine;
  readonly pattern: Pattern;
  readonly grid: Grid;
  readonly change: Acts['change'];
}): ReactNode {
  const { unit } = line;
  const [scope, setScope] = useState<MethodScope>(line.settledBy === 'unit' ? 'unit' : line.settledBy === 'pattern' ? 'pattern' : 'kind');
  const group = useId();
  const scopes = useRef<HTMLFieldSetElement>(null);
  const { offered, now } = useEffects(pattern, line, scope);

  const take = ({ method }: Offered): void => {
    const asked = method === 'usual' ? null : method;
    const units = scope === 'unit' ? [line] : linesOfKind(pattern, unit.kind);
    const places = unitPlaces(pattern, units, grid);
    const wish: MethodWish =
      scope === 'pattern' ? { scope, method: asked } : scope === 'unit' ? { scope, method: asked, places } : { scope, method: asked, kind: unit.kind, places };
    change(methodWords(wish, unit.id), (block) => chooseMethod(block, wish));
    // The way back goes away once it is taken.
    if (method === null) scopes.current?.querySelector<HTMLInputElement>('input:checked')?.focus();
  };

  const whom: Readonly<Record<MethodScope, string>> = {
    unit: unit.id === 'block' ? 'The block alone' : `Unit ${unit.id} alone`,
    kind: 'Every unit of its kind',
    pattern: 'The whole pattern',
  };
  return (
    <div className="chooser">
      <fieldset className="chooser-scopes" ref={scopes}>
        <legend className="quiet">Choose for</legend>
        {SCOPES.map((each) => (
          <label key={each} className="scope">
            <input type="radio" name={group} checked={scope === each} onChange={() => setScope(each)} />
            <span>{whom[each]}</span>
          </label>
        ))}
      </fieldset>
      <ul className="methods" aria-label={`Ways to make ${whom[scope]}`}>
        {offered.map((each) => (
          <li key={each.method ?? 'back'}>
            <button type="button" className="method-option" aria-pressed={isChosen(each, line, pattern, scope)} onClick={() => take(each)}>
              <span className="method-name">{nameOf(each, scope)}</span>
              {each.option && now ? (
                <Figures option={each.option} now={now} unit={pattern.block.unit} />
              ) : (
                <span className="quiet method-figures">working it out …</span>
              )}
            </button>
          </li>
        ))}
      </ul>
      <p className="quiet chooser-note">
        Figures are for everything there is to cut{pattern.choices.blocks > 1 ? `, ${pattern.choices.blocks} blocks` : ''}; after each, what it changes.
      </p>
    </div>
  );
}

function nameOf({ method, option }: Offered, scope: MethodScope): string {
  if (method === 'usual') return 'each in its usual way';
  if (method !== null) return METHOD_WORDS[method];
  return `${scope === 'unit' ? 'as others of its kind' : 'as the whole pattern'}${option?.becomes ? `: ${METHOD_WORDS[option.becomes]}` : ''}`;
}

/** Whether that is how things are already. */
function isChosen({ method }: Offered, line: UnitLine, pattern: Pattern, scope: MethodScope): boolean {
  const { choices, chosenUnits } = pattern;
  if (method === null) return false;
  if (scope === 'unit') return line.method === method;
  if (scope === 'kind') return linesOfKind(pattern, line.unit.kind).every(({ method: own, methods }) => methods.length === 0 || own === method);
  return choices.method === method && Object.keys(choices.methods).length === 0 && Object.keys(chosenUnits).length === 0;
}

function Figures({ option: { effect, trimmed }, now, unit }: { readonly option: MethodOption; readonly now: Effect; readonly unit: LengthUnit }): ReactNode {
  const count = (one: string, value: number, before: number): ReactNode => (
    <span className="remark">
      {several(value, one)} <Difference by={value - before} />
    </span>
  );
  const more = compare(effect.cloth, now.cloth);
  return (
    <span className="method-figures">
      {count('piece', effect.pieces, now.pieces)}
      {count('cut', effect.cuts, now.cuts)}
      <span className="remark">
        <Length value={effect.cloth} unit={unit} /> of cloth{' '}
        {more !== 0 && (
          <span className="difference">
            {more > 0 ? '+' : '−'}
            <Length value={more > 0 ? subtract(effect.cloth, now.cloth) : subtract(now.cloth, effect.cloth)} unit={unit} />
          </span>
        )}
      </span>
      {(effect.spare > 0 || now.spare > 0) && (
        <span className="remark">
          {effect.spare || 'none'} to spare <Difference by={effect.spare - now.spare} />
        </span>
      )}
      {(effect.bias > 0 || now.bias > 0) && (
        <span className="remark">
          {effect.bias || 'none'} on the bias <Difference by={effect.bias - now.bias} />
        </span>
      )}
      {effect.outlined > 0 && <span className="remark">{effect.outlined} by template</span>}
      {trimmed && <span className="remark">trimmed to size</span>}
    </span>
  );
}

const Difference = ({ by }: { readonly by: number }): ReactNode =>
  by !== 0 && <span className="difference">{by > 0 ? `+${by}` : `−${-by}`}</span>;
