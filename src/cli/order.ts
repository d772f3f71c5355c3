import { parseArgs } from 'node:util';
import { quoted } from '../block/problems.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { listed } from '../measure/words.ts';
import { isPublishing, readPublishing, type PublishingOrder, type TypedPublishing } from './publishing-order.ts';
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
export const COMMANDS = ['plan', 'pattern', 'sizes', 'templates', 'pictures', 'cutter', 'check'] as const;

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
      /** Name of the colourway that is asked for; null for the block as it is. */
      readonly colourway: string | null;
      readonly range: WishedRange;
      /** Only with templates. */
      readonly templates: TemplateOrder | null;
      /** Only with pattern, pictures and cutter. */
      readonly publishing: PublishingOrder | null;
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
  colourway: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  step: { type: 'string' },
  out: { type: 'string', short: 'o' },
  paper: { type: 'string' },
  landscape: { type: 'boolean' },
  columns: { type: 'string' },
  hatches: { type: 'boolean' },
  large: { type: 'boolean' },
  language: { type: 'string' },
  style: { type: 'string' },
  mat: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean', short: 'v' },
} as const;

type Option = keyof typeof OPTIONS;

/** Options that only some commands know; the others go with all. */
const GOES_WITH: Readonly<Partial<Record<Option, readonly (typeof COMMANDS)[number][]>>> = {
  from: ['sizes'],
  to: ['sizes'],
  step: ['sizes'],
  out: ['templates', 'pattern', 'pictures', 'cutter'],
  paper: ['templates', 'pattern'],
  landscape: ['pattern'],
  columns: ['pattern'],
  hatches: ['pattern', 'pictures'],
  large: ['pattern', 'pictures'],
  language: ['pattern', 'pictures', 'cutter'],
  style: ['pattern', 'pictures', 'cutter'],
  mat: ['cutter'],
};

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
  const { json = false, help: _, version: __, from, to, step, out, paper, landscape, columns, hatches, large, language, style, mat, colourway = null, ...wishes } = values;
  if (json && command === 'check') return wrong('The option --json goes with plan and sizes; check answers in one sentence.');
  if (json && command === 'templates') return wrong('The option --json goes with plan and sizes; templates are written to a file.');
  if (json && isPublishing(command)) return wrong(`The option --json goes with plan and sizes; what ${command} makes is written to a file.`);
  for (const name of Object.keys(values).filter(isOption)) {
    const knowing = GOES_WITH[name];
    if (knowing && !knowing.includes(command)) return wrong(`The option --${name} goes with ${listed(knowing)}, not with ${command}.`);
  }
  const range = { ...(from !== undefined && { from }), ...(to !== undefined && { to }), ...(step !== undefined && { step }) };
  const templates = command === 'templates' ? readTemplateOrder(out as string | undefined, paper as string | undefined) : good(null);
  if (!templates.ok) return templates;
  const typed = { out, paper, landscape, columns, hatches, large, language, style, mat } as TypedPublishing;
  const publishing = isPublishing(command) ? readPublishing(command, typed) : good(null);
  if (!publishing.ok) return publishing;
  return good({
    command,
    file,
    json: json === true,
    templates: templates.value,
    publishing: publishing.value,
    wishes: wishes as Wishes,
    colourway: colourway as string | null,
    range: range as WishedRange,
  });
}

const isCommand = (text: string): text is (typeof COMMANDS)[number] => COMMANDS.some((each) => each === text);
