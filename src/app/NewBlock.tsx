import { useState, type ReactNode } from 'react';
import { blank } from '../block/blank.ts';
import type { Block, Fabric, LengthUnit } from '../block/block.ts';
import { countOf } from '../block/cells.ts';
import { MAX_CELLS, MAX_NAME } from '../block/limits.ts';
import { typedSize } from '../block/typed-size.ts';
import { printLength } from '../measure/lengths.ts';
import type { Result } from '../measure/problem.ts';
import { Sheetlet } from './Sheetlet.tsx';

/** What a new block asks, as typed. */
interface Answers {
  readonly name: string;
  readonly width: string;
  readonly height: string;
  readonly unit: LengthUnit;
  readonly columns: string;
  readonly rows: string;
}

/** @returns an empty block as asked for, in the fabrics given; or what is wrong with the answers */
export function blankFrom(answers: Answers, fabrics: readonly Fabric[]): Result<Block> {
  // A unit that was typed holds against the one that was chosen.
  const size = typedSize(answers.width, answers.height, answers.unit);
  if (!size.ok) return size;
  return blank({
    name: answers.name.trim(),
    finished: size.value,
    grid: { columns: Number(answers.columns), rows: Number(answers.rows) },
    fabrics,
  });
}

/** Asks for a new block: name, finished size, grid. The fabrics on the table stay in the tray. */
export function NewBlock({ like, open, close }: {
  /** The block on the table, whose size and fabrics the new one takes over. */
  readonly like: Block;
  readonly open: (block: Block) => void;
  readonly close: () => void;
}): ReactNode {
  const { finished } = like;
  const { columns, rows } = countOf(like.grid);
  const [answers, setAnswers] = useState<Answers>({
    name: 'New block',
    width: printLength(finished.width, finished.unit, 'bare'),
    height: printLength(finished.height, finished.unit, 'bare'),
    unit: finished.unit,
    columns: String(columns),
    rows: String(rows),
  });
  const [problem, setProblem] = useState<string | null>(null);
  const answer = (some: Partial<Answers>): void => setAnswers((now) => ({ ...now, ...some }));
  return (
    <Sheetlet
      title="A new block"
      doneWords="Lay it out"
      problem={problem}
      close={close}
      done={() => {
        const made = blankFrom(answers, like.fabrics);
        if (made.ok) open(made.value);
        else setProblem(made.problem.sentence);
        return made.ok;
      }}
    >
      <label className="field">
        <span>Name</span>
        <input type="text" value={answers.name} maxLength={MAX_NAME} onChange={(event) => answer({ name: event.target.value })} />
      </label>
      <div className="fields">
        <label className="field">
          <span>Finished width</span>
          <input type="text" value={answers.width} onChange={(event) => answer({ width: event.target.value })} />
        </label>
        <label className="field">
          <span>Finished height</span>
          <input type="text" value={answers.height} onChange={(event) => answer({ height: event.target.value })} />
        </label>
        <label className="field">
          <span>In</span>
          <select value={answers.unit} onChange={(event) => answer({ unit: event.target.value as LengthUnit })}>
            <option value="in">inches</option>
            <option value="cm">centimetres</option>
          </select>
        </label>
      </div>
      <div className="fields">
        <label className="field">
          <span>Columns</span>
          <input
            type="number"
            min={1}
            max={MAX_CELLS}
            value={answers.columns}
            onChange={(event) => answer({ columns: event.target.value })}
          />
        </label>
        <label className="field">
          <span>Rows</span>
          <input type="number" min={1} max={MAX_CELLS} value={answers.rows} onChange={(event) => answer({ rows: event.target.value })} />
        </label>
      </div>
      <p className="quiet">Your fabrics stay in the tray. The drawing that is on the table now stays on the shelf.</p>
    </Sheetlet>
  );
}
