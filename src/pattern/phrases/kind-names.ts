import type { UnitKind } from '../../geometry/piecing/assembly.ts';

/** What a language calls one kind of unit, one of it and many. */
export interface KindName {
  readonly one: string;
  readonly many: string;
  /** As the trade shortens it, where it does. */
  readonly short?: { readonly one: string; readonly many: string };
}

export type KindNames = Readonly<Record<UnitKind, KindName>>;

/** How a language prints lengths and what its names of kinds are: all that a house style needs to know of it. */
export interface ValueWords {
  readonly kinds: KindNames;
  /** What stands for inches in a sentence where no sign does: "in.". */
  readonly inches: string;
  /** Between whole and tenths of an inch that is told and not measured; centimetres have a comma everywhere. */
  readonly point: '.' | ',';
}
