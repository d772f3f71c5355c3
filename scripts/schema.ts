import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { blockShape, number, point } from '../src/files/block-shape.ts';

/** Where the published schema lies. */
export const SCHEMA_FILE = new URL('../schema/block.schema.json', import.meta.url);

/** @returns the JSON Schema (draft 2020-12) of a block file, made from the shape that the file's own door checks */
export function schemaText(): string {
  const schema = toJsonSchema(blockShape, {
    target: 'draft-2020-12',
    typeMode: 'input',
    definitions: { number, point },
    // JSON has no infinite numbers, and no pattern can tell half a character.
    ignoreActions: ['finite', 'check'],
  });
  return `${JSON.stringify({ $schema: schema.$schema, ...schema }, null, 2)}\n`;
}

// npx tsx scripts/schema.ts
if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) writeFileSync(SCHEMA_FILE, schemaText());
