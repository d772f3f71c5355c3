import { parseArgs } from 'node:util';
import { quoted } from '../block/problems.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { listed } from '../measure/words.ts';
import { readTemplateOrder, type TemplateOrder } from './templates.ts';

/** The choices as typed, not yet read: lengths need the unit of the block they are for. */
export interface Wishes {
  readonly method?: readonly string[];
  readonly trim?: string;
  readonly seam?: string;
  readonly ruler?: string;
  readonly width?: string;
  readonly way?: string;
  readonly assembly?: string;
  readonly blocks?: string;
}

/** The commands that read a block. */
export const COMMANDS = ['plan', 'sizes', 'templates', 'check'] as const;

/** The finished sizes of a table as typed. */
export type WishedRange = Readonly<Partial<Record<'from' | 'to' | 'step', string>>>;

/** What the person asks the program to do. */
export type Order =
  | { readonly command: 'help' | 'version' }
  | {
      readonly command: (typeof COMMANDS)[number];
      readonly file: string;
      readonly json: boolean;
      readonly wishes: Wishes;
      readonly range: WishedRange;
      /** Only with templates. */
      readonly templates: TemplateOrder | null;
    };

const OPTIONS = {
  method: { type: 'string', multiple: true },
  trim: { type: 'string' },
  seam: { type: 'string' },
  ruler: { type: 'string' },
  way: { type: 'string' },
  assembly: { type: 'string' },
  blocks: { type: 'string' },
  width: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  step: { type: 'string' },
  out: { type: 'string', short: 'o' },
  paper: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean', short: 'v' },
} as const;

type Option = keyof typeof OPTIONS;

const isOption = (name: string): name is Option => Object.hasOwn(OPTIONS, name);
const wrong = (sentence: string): Result<never> => bad('usage', sentence);

/** @returns what the arguments ask for, or in one sentence why they cannot be followed and what is possible */
export function readOrder(args: readonly string[]): Result<Order> {
  // Not strict: the sentences about wrong options are our own, for Node's run over several lines.
  const parsed = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true, strict: false, tokens: true });
  const { tokens, positionals, values } = parsed;
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    if (!isOption(name)) {
      return wrong(`There is no option ${quoted(rawName)}; the options are ${Object.keys(OPTIONS).map((each) => `--${each}`).join(', ')}.`);
    }
    const { type } = OPTIONS[name];
    if (type === 'boolean' && value !== undefined) return wrong(`The option --${name} stands alone; leave out ${quoted(value)}.`);
    if (type === 'string' && value === undefined) return wrong(`The option --${name} needs a value; see piecewright --help.`);
  }
  if (values.help) return good({ command: 'help' });
  if (values.version) return good({ command: 'version' });
  const [command, file, ...others] = positionals;
  if (command === undefined) return wrong(`Say what to do: ${COMMANDS.map((each) => `piecewright ${each} FILE`).join(' or ')}; --help tells more.`);
  if (!isCommand(command)) return wrong(`There is no command ${quoted(command)}; the commands are ${listed(COMMANDS)}.`);
  if (file === undefined) return wrong(`Name the block file: piecewright ${command} FILE, or ${command} - to read what is piped in.`);
  if (others.length > 0) return wrong(`One file at a time: leave out ${quoted(others.join(' '))}.`);
  const { json = false, help: _, version: __, from, to, step, out, paper, ...wishes } = values;
  if (json && command === 'check') return wrong('The option --json goes with plan and sizes; check answers in one sentence.');
  if (json && command === 'templates') return wrong('The option --json goes with plan and sizes; templates are written to a file.');
  const range = { ...(from !== undefined && { from }), ...(to !== undefined && { to }), ...(step !== undefined && { step }) };
  const [ranged] = Object.keys(range);
  if (ranged !== undefined && command !== 'sizes') return wrong(`The option --${ranged} goes with sizes, not with ${command}.`);
  const asked = [...(out === undefined ? [] : ['out']), ...(paper === undefined ? [] : ['paper'])];
  if (asked.length > 0 && command !== 'templates') return wrong(`The option --${asked[0]} goes with templates, not with ${command}.`);
  const templates = command === 'templates' ? readTemplateOrder(out as string | undefined, paper as string | undefined) : good(null);
  if (!templates.ok) return templates;
  return good({ command, file, json: json === true, templates: templates.value, wishes: wishes as Wishes, range: range as WishedRange });
}

const isCommand = (text: string): text is (typeof COMMANDS)[number] => COMMANDS.some((each) => each === text);
