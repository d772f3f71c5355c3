import type { ReactNode } from 'react';
import { pathsByFabric, type Placed } from './picture.ts';

/** Pieces in their fabrics, each with a line round it. */
export function ClothPaths({ placed, colors }: {
  readonly placed: readonly Placed[];
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  return [...pathsByFabric(placed)].map(([fabric, path]) => (
    <path key={fabric} className="picture-piece" d={path} fill={colors.get(fabric)} />
  ));
}
