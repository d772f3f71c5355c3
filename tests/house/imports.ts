import { nameOf, nodesOf, spelledOut, type Source, type SyntaxNode } from './source.ts';

/** One place where a file reaches for another file or for a package. */
export interface Import {
  /** What is reached for, as written; null where it is worked out as the program runs. */
  readonly wanted: string | null;
  /** Offset of the import in the file. */
  readonly start: number;
  /** Whether it hands everything on: `export * from`. */
  readonly handsOnAll: boolean;
  /** Whether it hands something on: `export … from`. */
  readonly handsOn: boolean;
}

/**
 * @returns every import of a file: static, type-only, `export … from`, dynamic, `import('…').Type`, `import x = require`,
 * `require`, `import.meta.glob`, `new URL('…', import.meta.url)` and `/// <reference>`, in no particular order
 */
export function importsOf(source: Source): Import[] {
  const imports: Import[] = [];
  const add = (wanted: unknown, node: SyntaxNode, handsOn = false, handsOnAll = false): void => {
    imports.push({ wanted: typeof wanted === 'string' ? wanted : spelledOut(wanted), start: node.start, handsOn, handsOnAll });
  };
  for (const { node } of nodesOf(source)) {
    const given = (node['arguments'] ?? []) as SyntaxNode[];
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ImportExpression':
      case 'TSImportType':
        add(node['source'], node);
        break;
      case 'ExportNamedDeclaration':
        if (node['source']) add(node['source'], node, true);
        break;
      case 'ExportAllDeclaration':
        add(node['source'], node, true, true);
        break;
      case 'TSExternalModuleReference':
        add(node['expression'], node);
        break;
      case 'CallExpression': {
        const callee = node['callee'] as SyntaxNode;
        if (nameOf(callee) === 'require') add(given[0], node);
        if (ofImportMeta(callee, 'glob')) for (const pattern of listed(given[0])) add(pattern, node);
        break;
      }
      case 'NewExpression':
        if (nameOf(node['callee']) === 'URL' && given[1] && ofImportMeta(given[1], 'url')) add(given[0], node);
        break;
    }
  }
  for (const reference of source.text.matchAll(/^\s*\/\/\/\s*<reference\s+path=["']([^"']+)["']/gm)) {
    imports.push({ wanted: reference[1] ?? null, start: reference.index, handsOn: false, handsOnAll: false });
  }
  return imports;
}

const ofImportMeta = (node: SyntaxNode, name: string): boolean =>
  node.type === 'MemberExpression' && (node['object'] as SyntaxNode).type === 'MetaProperty' && nameOf(node['property']) === name;

const listed = (node: SyntaxNode | undefined): unknown[] => (node?.type === 'ArrayExpression' ? (node['elements'] as unknown[]) : [node]);
