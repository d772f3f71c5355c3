import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { toJsonSchema, type ConversionConfig } from '@valibot/to-json-schema';
import { blockShape, number, point } from '../src/files/block-shape.ts';
import { houseStyleShape } from '../src/files/house-style-shape.ts';
import { picture } from '../src/files/publication-shape.ts';

/** Where the published schemas lie. */
export const SCHEMA_FILE = new URL('../schema/block.schema.json', import.meta.url);
export const STYLE_SCHEMA_FILE = new URL('../schema/house-style.schema.json', import.meta.url);

/** How a schema (draft 2020-12) is made from the shape that a file's own door checks. */
const MADE: ConversionConfig = {
  target: 'draft-2020-12',
  typeMode: 'input',
  // JSON has no infinite numbers, and no pattern can tell half a character.
  ignoreActions: ['finite', 'check'],
};

const written = ({ $schema, ...schema }: { readonly $schema?: string }): string => `${JSON.stringify({ $schema, ...schema }, null, 2)}\n`;

/** @returns the JSON Schema of a block file */
export const schemaText = (): string => written(toJsonSchema(blockShape, { ...MADE, definitions: { number, point, picture } }));

/** @returns the JSON Schema of the file of a house style */
export const styleSchemaText = (): string => written(toJsonSchema(houseStyleShape, { ...MADE, definitions: { picture } }));

// npx tsx scripts/schema.ts
if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(SCHEMA_FILE, schemaText());
  writeFileSync(STYLE_SCHEMA_FILE, styleSchemaText());
}
