import { useId, useMemo, type ReactNode } from 'react';
import type { Block } from '../../../block/block.ts';
import type { AssemblyOrder } from '../../../geometry/piecing/order.ts';
import { several } from '../../../measure/words.ts';
import { assemblyOrders, type OrderOption } from '../../../pattern/assembly-orders.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { Dialog } from '../../Dialog.tsx';
import { PanelPicture } from '../steps/StepPanels.tsx';
import '../../face/assembly.css';

/** The orders in which a block can be put together, each with its picture and what it comes to, to choose one. */
export default function AssemblyDialog({ block, pattern, chosen, colors, choose, close }: {
  /** The drawing that the pattern is of. */
  readonly block: Block;
  readonly pattern: Pattern;
  readonly chosen: AssemblyOrder;
  readonly colors: ReadonlyMap<string, string>;
  readonly choose: (order: AssemblyOrder) => void;
  readonly close: () => void;
}): ReactNode {
  const orders = useMemo(() => assemblyOrders(block, pattern), [block, pattern]);
  const group = useId();
  const [found] = orders;
  const taken = orders.some(({ order }) => order === chosen) ? chosen : 'as found';
  return (
    <Dialog title="Order of assembly" className="wide" close={close}>
      <p>
        {orders.length > 1
          ? 'The same units can be put together in these orders. The steps, their pressing and the proof follow the one you choose.'
          : 'These units lie so that straight seams put them together in one order alone.'}
      </p>
      <fieldset className="orders">
        <legend className="unseen">Order</legend>
        {orders.map((option) => (
          <label key={option.order} className="order">
            <input type="radio" name={group} value={option.order} checked={option.order === taken} onChange={() => choose(option.order)} />
            <span className="order-words">
              <span className="order-name">{nameOf(option)}</span>
              <span className="quiet">{GOOD_FOR[option.order]}</span>
              <span className="order-figures">{remarksOn(option).join(' · ')}</span>
            </span>
            <span className="order-picture">
              <PanelPicture panel={option.picture} largest={Math.max(option.picture.frame.width, option.picture.frame.height)} colors={colors} />
            </span>
          </label>
        ))}
      </fieldset>
      {found && <p className="quiet">Numbers tell in which order seams are sewn; equal units, which are sewn alike, have equal numbers.</p>}
    </Dialog>
  );
}

const NAMES: Readonly<Record<AssemblyOrder, string>> = {
  'as found': 'As found',
  rows: 'By rows',
  columns: 'By columns',
  web: 'As a web',
  quarters: 'By quarters',
};

const nameOf = ({ order, same }: OrderOption): string => (same ? `${NAMES[order]}: ${NAMES[same].toLowerCase()}` : NAMES[order]);

const GOOD_FOR: Readonly<Record<AssemblyOrder, string>> = {
  'as found': 'Equal parts are made alike, the smallest first.',
  rows: 'Each row by itself, then the long seams between them.',
  columns: 'Each column by itself, then the long seams between them.',
  web: 'Chain-pieced column onto column, the threads uncut: nothing is mixed up on the way to the iron. Then the long seams.',
  quarters: 'Four quarters, joined in pairs: small to handle, and easy to turn about.',
};

function remarksOn({ seams, points, loose, units }: OrderOption): readonly string[] {
  const nest = points === 0 ? [] : [`${several(points, 'point')} to match, ${loose === 0 ? (points === 1 ? 'which nests' : 'all nest') : `${points - loose} of them nest`}`];
  return [several(seams, 'seam'), ...nest, ...(units === 0 ? [] : [several(units, 'kind of unit', 'kinds of unit')])];
}
