import { importsOf } from './imports.ts';
import { nameOf, nodesOf, reachedName, spelledOut, where, type Place, type Rule, type SyntaxNode } from './source.ts';

/** What reaches over a network from a page or from Node, by its global name. */
const REACHES_OUT = [
  'fetch',
  'fetchLater',
  'XMLHttpRequest',
  'WebSocket',
  'WebSocketStream',
  'WebTransport',
  'EventSource',
  'RTCPeerConnection',
  'importScripts',
  'sendBeacon',
];
const NETWORK_MODULES = /^(node:)?(http|https|http2|net|tls|dns|dgram)(\/|$)/;

/** Names of XML vocabularies: addresses to look at, never loaded. */
const VOCABULARY = /^http:\/\/www\.w3\.org\//;
const ADDRESS = /^\s*((https?|wss?|ftp):)?\/\/\w/i;
const SCREEN_ROOMS = /^src\/(app|canvas)\//;

/** Nothing in the source reaches over a network, and nothing on the screen names an address elsewhere. */
export const staysOffline: Rule = (source) => {
  if (source.file.endsWith('.css')) {
    const loads = source.text.matchAll(/(?:url\(\s*|@import\s+)["']?\s*((?:https?:)?\/\/[^"')\s]+)/gi);
    return [...loads].map((load) => `${where(source, load.index)} loads ${load[1]}: bring the file into the project`);
  }
  const nodes = nodesOf(source);
  const uses = nodes.flatMap(({ node, place }) => reachingNames(node, place).map((name) => `${where(source, node.start)} uses ${name}`));
  const modules = importsOf(source)
    .filter(({ wanted }) => wanted !== null && NETWORK_MODULES.test(wanted))
    .map(({ wanted, start }) => `${where(source, start)} imports ${wanted}`);
  const addresses = !SCREEN_ROOMS.test(source.file)
    ? []
    : nodes.flatMap(({ node }) => {
        const text = headOf(node);
        if (text === null || !ADDRESS.test(text) || VOCABULARY.test(text)) return [];
        return [`${where(source, node.start)} names the address ${text.trim()}: bring what it holds into the project`];
      });
  return [...[...uses, ...modules].map((fault) => `${fault}: everything is worked out on this machine`), ...addresses];
};

/** @returns the banned names a node reaches for; the same word as somebody's own method or key is nobody's business */
function reachingNames(node: SyntaxNode, { parent, part }: Place): string[] {
  if (node.type === 'VariableDeclarator') return takenOut(node).filter(isBanned);
  if (part === 'key') return [];
  if (parent?.type === 'MemberExpression' && part === 'property') {
    const name = parent['computed'] === true ? spelledOut(node) : nameOf(node);
    const matters = parent['computed'] === true || isGlobalObject(parent['object']) || name === 'sendBeacon';
    return [name].filter((reached) => matters && isBanned(reached)) as string[];
  }
  return [nameOf(node)].filter(isBanned) as string[];
}

/** @returns what `const { fetch: get } = window` takes out under another name (under its own, the name is seen by itself) */
function takenOut(declarator: SyntaxNode): string[] {
  const pattern = declarator['id'] as SyntaxNode;
  if (pattern.type !== 'ObjectPattern' || !isGlobalObject(declarator['init'])) return [];
  const renamed = (pattern['properties'] as SyntaxNode[]).filter(
    (property) => property.type === 'Property' && property['shorthand'] !== true,
  );
  return renamed.flatMap((property) => reachedName(property) ?? []);
}

/** @returns the text at the head of a string or a template, where an address would begin */
function headOf(node: SyntaxNode): string | null {
  if (node.type === 'TemplateLiteral') return (node['quasis'] as { value: { cooked: string } }[])[0]?.value.cooked ?? null;
  return spelledOut(node);
}

const isBanned = (name: string | null): boolean => name !== null && REACHES_OUT.includes(name);
const isGlobalObject = (node: unknown): boolean => ['window', 'self', 'globalThis', 'navigator'].includes(nameOf(node) ?? '');
