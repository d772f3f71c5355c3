import { useEffect, useMemo, useRef, useState } from 'react';
import type { Block, Fabric } from '../../block/block.ts';
import { takeColourway } from '../../block/colour/colourways.ts';
import { good, type Result } from '../../measure/problem.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { createClothDesk, workerBench as clothBench } from '../cloth-desk.ts';
import type { Cloths } from '../cloths.ts';
import { workerBench, type Bench } from '../pattern-desk.ts';
import { createStore, useStore } from '../store.ts';

/** What is known of the pattern of one colourway. */
export interface ColourwayPattern {
  /** null before it is worked out; its cloth is cut better and better. */
  readonly pattern: Pattern | null;
  /** Why there is none, in one sentence. */
  readonly fault: string | null;
}

const NOTHING: ColourwayPattern = { pattern: null, fault: null };
const FAILED = 'The pattern of this colourway could not be worked out; fold it up and unfold it to try again.';

/** @returns the block in a colourway, without what no cutting list depends on */
function drawingIn(block: Block, name: string): Result<Block> {
  const taken = takeColourway(block, name);
  if (!taken.ok) return taken;
  const { publication: _, colourways: __, photos: ___, ...drawing } = taken.value;
  return good({ ...drawing, fabrics: drawing.fabrics.map(unpictured) });
}

const unpictured = ({ photo: _, ...fabric }: Fabric): Fabric => fabric;

/** Works until the search for a pattern is over. */
async function workedOut(bench: Bench, block: Block): Promise<Result<Pattern> | null> {
  let standing = await bench.workOut(block);
  while (standing.looking) standing = await bench.goOn();
  return bench.collect();
}

/**
 * Works out the pattern of one colourway after the other, as it is asked for, in workers of its own: the table and its sheet go on as
 * they are.
 * @param name of the colourway that is asked for; null for none
 */
export function useColourwayPattern(block: Block, name: string | null): ColourwayPattern {
  const cloths = useMemo(() => createStore<Cloths>({ of: null, pattern: null, states: new Map() }), []);
  const cut = useStore(cloths, (now) => now);
  const bench = useRef<Bench | null>(null);
  const show = useRef<((pattern: Pattern | null) => void) | null>(null);
  const [made, setMade] = useState<ColourwayPattern & { readonly of: string | null }>({ ...NOTHING, of: null });
  const asked = useMemo(() => (name === null ? null : drawingIn(block, name)), [block, name]);
  // What it is called, and what is tried in the room, changes nothing about it.
  const key = asked?.ok ? JSON.stringify(asked.value) : null;
  useEffect(() => {
    show.current?.(null);
    if (!asked?.ok) return undefined;
    let wanted = true;
    bench.current ??= workerBench();
    const here = bench.current;
    const over = (found: ColourwayPattern): void => {
      if (!wanted) return;
      wanted = false;
      setMade({ ...found, of: key });
      if (!found.pattern) return;
      show.current ??= createClothDesk(cloths, clothBench, () => Promise.resolve());
      show.current(found.pattern);
    };
    workedOut(here, asked.value).then(
      (found) => over(found?.ok ? { pattern: found.value, fault: null } : { pattern: null, fault: found?.problem.sentence ?? FAILED }),
      () => over({ pattern: null, fault: FAILED }),
    );
    return () => {
      // What is still being worked out is given up with its worker.
      if (wanted) {
        here.stop();
        bench.current = null;
      }
      wanted = false;
    };
  }, [key]);
  useEffect(
    () => () => {
      bench.current?.stop();
      bench.current = null;
      show.current?.(null);
      show.current = null;
    },
    [],
  );
  if (asked && !asked.ok) return { pattern: null, fault: asked.problem.sentence };
  if (key === null || made.of !== key) return NOTHING;
  return cut.of !== null && cut.of === made.pattern ? { ...made, pattern: cut.pattern } : made;
}
