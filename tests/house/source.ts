import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'oxc-parser';

/** One node of a parsed file, as the parser gives it (ESTree with TypeScript). */
export interface SyntaxNode {
  readonly type: string;
  /** Offset of its first character. */
  readonly start: number;
  readonly [part: string]: unknown;
}

/** What stands round a node: the node above it, and the part of that node it is. */
export interface Place {
  readonly parent: SyntaxNode | null;
  readonly part: string;
}

/** One source file, read but not run. */
export interface Source {
  /** Path from the project's folder, with forward slashes, such as "src/measure/rational.ts". */
  readonly file: string;
  readonly text: string;
}

/** A rule of the house: what breaks it in one file, each as "file:line what is wrong and what to do". */
export type Rule = (source: Source) => string[];

const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === 'object' && value !== null && typeof Reflect.get(value, 'type') === 'string';

/** @returns every node of a TypeScript file with its place, outer before inner; throws where the file cannot be parsed */
export function nodesOf({ file, text }: Source): { readonly node: SyntaxNode; readonly place: Place }[] {
  const { program, errors } = parseSync(file, text);
  if (errors[0]) throw new Error(`${file} cannot be parsed: ${errors[0].message}`);
  const found: { node: SyntaxNode; place: Place }[] = [];
  const walk = (value: unknown, place: Place): void => {
    if (Array.isArray(value)) {
      for (const item of value) walk(item, place);
    } else if (isNode(value)) {
      found.push({ node: value, place });
      for (const [part, inner] of Object.entries(value)) walk(inner, { parent: value, part });
    }
  };
  walk(program, { parent: null, part: 'program' });
  return found;
}

/** @returns "file:line" of an offset, lines counted from 1 */
export const where = ({ file, text }: Source, offset: number): string => `${file}:${text.slice(0, offset).split('\n').length}`;

/** @returns the string that a literal or a template without holes spells out, or null */
export function spelledOut(node: unknown): string | null {
  if (!isNode(node)) return null;
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  if (node.type !== 'TemplateLiteral' || (node['expressions'] as unknown[]).length > 0) return null;
  const [only] = node['quasis'] as { value: { cooked: string } }[];
  return only?.value.cooked ?? null;
}

/** @returns the name of an identifier, or null for any other node */
export const nameOf = (node: unknown): string | null => (isNode(node) && node.type === 'Identifier' ? String(node['name']) : null);

/** @returns the name under which `object.name`, `object['name']` or a destructured `{ name }` reaches in; null where it is worked out as it runs */
export function reachedName(node: SyntaxNode): string | null {
  const key = node.type === 'MemberExpression' ? node['property'] : node['key'];
  return node['computed'] === true ? spelledOut(key) : (nameOf(key) ?? spelledOut(key));
}

/** @returns every file under a folder of the project whose name matches, read from the disk */
export function sourcesUnder(folder: string, ending: RegExp): Source[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ file: path.replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }));
}
