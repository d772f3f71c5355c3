import type { Assembly } from './assembly.ts';

/** @returns whether the block of an assembly is a web: its rows are no units, for they hang together before they are whole */
export const isWeb = ({ kind, parts }: Assembly): boolean => kind === 'joined unit' && parts.some((part) => !part.piece && part.kind === undefined);
