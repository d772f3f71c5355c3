import { nameOf, nodesOf, reachedName, spelledOut, where, type Place, type Rule, type SyntaxNode } from './source.ts';

/** Where nothing may round. Floats are for ink, and one module makes ink of exact geometry. */
const EXACT_ROOMS = /^src\/(measure|geometry|cutting|sewing)\//;
const INK = 'src/geometry/ink.ts';

/** What Math does exactly on whole numbers; everything else in it gives a nearest double. */
const EXACT_MATH = ['abs', 'ceil', 'clz32', 'floor', 'imul', 'max', 'min', 'round', 'sign', 'trunc'];

/** Names that stand for rounding wherever they are reached, with what to use instead. */
const INEXACT_NAMES = new Map([
  ['parseFloat', 'read numbers as whole numbers and fractions'],
  ['toFixed', 'print lengths from their exact value'],
  ['toPrecision', 'print lengths from their exact value'],
  ['toExponential', 'print lengths from their exact value'],
  ['EPSILON', 'compare exactly: a tolerance is not a proof'],
]);

/** In the rooms that decide, nothing computes with rounded numbers, by whatever name it is reached. */
export const staysExact: Rule = (source) => {
  if (!EXACT_ROOMS.test(source.file) || source.file === INK) return [];
  const nodes = nodesOf(source);
  return nodes.flatMap(({ node, place }) => {
    const faults = [
      ...inexactMath(node, place),
      ...inexactName(node, place),
      ...numberInDisguise(node, place),
    ];
    return faults.map((fault) => `${where(source, node.start)} ${fault}`);
  });
};

/** @returns whether a node is `Math` itself, as it stands or as `globalThis.Math` */
const isMath = (node: SyntaxNode): boolean => nameOf(node) === 'Math' || (node.type === 'MemberExpression' && reachedName(node) === 'Math');

function inexactMath(node: SyntaxNode, { parent, part }: Place): string[] {
  // The name in `globalThis.Math` is looked at with the whole of it.
  if (!isMath(node) || (parent?.type === 'MemberExpression' && part === 'property' && nameOf(node) === 'Math')) return [];
  const reached =
    parent?.type === 'MemberExpression' && part === 'object'
      ? [reachedName(parent)]
      : parent?.type === 'VariableDeclarator' && part === 'init' && (parent['id'] as SyntaxNode).type === 'ObjectPattern'
        ? ((parent['id'] as SyntaxNode)['properties'] as SyntaxNode[]).map((property) =>
            property.type === 'Property' ? reachedName(property) : null,
          )
        : [null];
  return reached.flatMap((name) => {
    if (name === null) return ['uses Math in a way that hides what it computes: name its exact functions one by one'];
    return EXACT_MATH.includes(name)
      ? []
      : [`uses Math.${name}, which gives the nearest double: keep the exact form, or move the ink to ${INK}`];
  });
}

function inexactName(node: SyntaxNode, { parent, part }: Place): string[] {
  const isComputedKey = parent?.type === 'MemberExpression' && part === 'property' && parent['computed'] === true;
  // A shorthand `{ toFixed }` holds the name twice, as key and as value.
  if (parent?.type === 'Property' && part === 'value' && parent['shorthand'] === true) return [];
  const name = nameOf(node) ?? (isComputedKey ? spelledOut(node) : null);
  const instead = name === null ? undefined : INEXACT_NAMES.get(name);
  return instead === undefined ? [] : [`uses ${name}: ${instead}`];
}

/** `const N = Number` would hide Number.EPSILON and Number.parseFloat; `numbers.map(Number)` hides nothing. */
function numberInDisguise(node: SyntaxNode, { parent, part }: Place): string[] {
  if (nameOf(node) !== 'Number' || parent === null) return [];
  const renamed = parent.type === 'VariableDeclarator' && part === 'init' && nameOf(parent['id']) !== null;
  const workedOut = parent.type === 'MemberExpression' && part === 'object' && reachedName(parent) === null;
  return renamed || workedOut ? ['uses Number in a way that hides what is taken from it: name it in full'] : [];
}
