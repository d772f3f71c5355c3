import loadHighs from 'highs';

/** A column of a programme: its cost, and how much it adds to each row. */
export interface Entry {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly adds: readonly number[];
}

/** What each row must come to at least, or at most. */
export interface Row {
  readonly least: number;
  readonly most: number;
}

/** A linear programme of least cost that grows by columns. */
export interface Linear {
  readonly grow: (entries: readonly Entry[]) => void;
  /** @returns the least cost as it is now, how much each column is used and what each row is worth: nearest doubles, to choose by; null where there is none */
  readonly solve: () => { readonly cost: number; readonly uses: readonly number[]; readonly worths: readonly number[] } | null;
  readonly close: () => void;
}

/** Solves linear programmes, and programmes in whole numbers. What it says is only ever a proposal. */
export interface Solver {
  readonly linear: (rows: readonly Row[]) => Linear;
  /**
   * @param nodes most branches looked into
   * @returns how often each column is used at least cost, as far as found (null where nothing was), and whether the search came to its
   * end: what was found is least, or there is nothing to find
   */
  readonly whole: (
    rows: readonly Row[],
    entries: readonly Entry[],
    nodes: number,
  ) => { readonly uses: readonly number[] | null; readonly ended: boolean };
}

/** What HiGHS calls a solution that keeps to every row. */
const FEASIBLE = 2;

/**
 * Loads HiGHS, a general solver of linear and integer programmes.
 * @param locate where its WebAssembly file is, where that is not beside its script
 */
export async function openSolver(locate?: (file: string) => string): Promise<Solver> {
  const highs = await loadHighs(locate === undefined ? {} : { locateFile: locate });
  const matrix = (rows: number, entries: readonly Entry[]) => {
    const starts = [0];
    for (const { rows: at } of entries) starts.push(starts.at(-1)! + at.length);
    return {
      format: 'csc' as const,
      numRows: rows,
      numCols: entries.length,
      starts: new Int32Array(starts),
      indices: new Int32Array(entries.flatMap(({ rows: at }) => at)),
      values: new Float64Array(entries.flatMap(({ adds }) => adds)),
    };
  };
  const columns = (rows: number, entries: readonly Entry[]) => ({
    cost: new Float64Array(entries.map(({ cost }) => cost)),
    lower: new Float64Array(entries.length),
    upper: new Float64Array(entries.length).fill(highs.infinity),
    matrix: matrix(rows, entries),
  });
  const begun = (rows: readonly Row[]) => {
    const model = highs.createModel();
    model.options.set({ output_flag: false, random_seed: 1 });
    for (const { least, most } of rows) {
      model.addRow(least === -Infinity ? -highs.infinity : least, most === Infinity ? highs.infinity : most, { indices: [], values: [] });
    }
    return model;
  };
  const optimal = highs.constants.modelStatus.optimal;

  return {
    linear: (rows) => {
      const model = begun(rows);
      return {
        grow: (entries) => void (entries.length > 0 && model.addCols(columns(rows.length, entries))),
        solve: () => {
          model.run();
          if (model.getModelStatus() !== optimal) return null;
          const { colValue, rowDual } = model.getSolution();
          return { cost: model.getObjectiveValue(), uses: [...colValue], worths: [...rowDual] };
        },
        close: () => model.dispose(),
      };
    },
    whole: (rows, entries, nodes) => {
      const model = begun(rows);
      try {
        model.addCols(columns(rows.length, entries));
        entries.forEach((_, at) => model.changeColIntegrality(at, highs.constants.variableType.integer));
        // Costs are whole, so nothing is better than the best by less than 1.
        model.options.set({ mip_max_nodes: nodes, mip_rel_gap: 0, mip_abs_gap: 0.99 });
        model.run();
        const status = model.getModelStatus();
        const found = Number(model.info.get('primal_solution_status')) === FEASIBLE;
        const uses = found ? [...model.getSolution().colValue].map((use) => Math.round(use)) : null;
        return { uses, ended: status === optimal || status === highs.constants.modelStatus.infeasible };
      } finally {
        model.dispose();
      }
    },
  };
}
