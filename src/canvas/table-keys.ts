import { TOOLS, type Tool } from './tool.ts';

/** What a key asks of the drawing table. */
export type TableVerb =
  | { readonly verb: 'move'; readonly dx: number; readonly dy: number; readonly half?: boolean }
  | { readonly verb: 'edge'; readonly dx: number; readonly dy: number }
  | { readonly verb: 'use' }
  | { readonly verb: 'close' }
  | { readonly verb: 'cancel' }
  | { readonly verb: 'erase' }
  | { readonly verb: 'turn'; readonly by: 1 | 3 }
  | { readonly verb: 'take'; readonly tool: Tool }
  | { readonly verb: 'symmetry'; readonly by: 1 | -1 }
  | { readonly verb: 'fabric'; readonly index: number };

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const EDGES: Readonly<Record<string, readonly [number, number]>> = { Home: [-1, 0], End: [1, 0], PageUp: [0, -1], PageDown: [0, 1] };

/** @returns what a key asks for while the table has the focus, or null when it is none of the table's keys */
export function tableVerb(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>): TableVerb | null {
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  const { key } = event;
  const arrow = ARROWS[key];
  if (arrow) return { verb: 'move', dx: arrow[0], dy: arrow[1], half: event.shiftKey };
  const edge = EDGES[key];
  if (edge) return { verb: 'edge', dx: edge[0], dy: edge[1] };
  if (key === ' ') return { verb: 'use' };
  if (key === 'Enter') return { verb: 'close' };
  if (key === 'Escape') return { verb: 'cancel' };
  if (key === 'Delete' || key === 'Backspace') return { verb: 'erase' };
  if (/^[1-9]$/.test(key)) return { verb: 'fabric', index: Number(key) - 1 };
  const letter = key.toUpperCase();
  if (letter === 'T') return { verb: 'turn', by: event.shiftKey ? 3 : 1 };
  if (letter === 'M') return { verb: 'symmetry', by: event.shiftKey ? -1 : 1 };
  const tool = TOOLS.find((each) => each.key === letter);
  return tool ? { verb: 'take', tool: tool.tool } : null;
}
