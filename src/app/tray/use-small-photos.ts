import { useEffect, useState } from 'react';
import type { Block } from '../../block/block.ts';

const NONE: ReadonlyMap<string, string> = new Map();

/** @returns photos of fabrics as backgrounds, by the fabrics' ids; none until they are drawn */
export function useSmallPhotos({ fabrics, photos }: Pick<Block, 'fabrics' | 'photos'>): ReadonlyMap<string, string> {
  const [found, setFound] = useState(NONE);
  useEffect(() => {
    let asked = true;
    const set = (next: ReadonlyMap<string, string>): void => void (asked && setFound(next));
    if (photos) void import('./small-photos.ts').then(({ smallPhotos }) => smallPhotos({ fabrics, photos })).then(set, () => undefined);
    else set(NONE);
    return () => void (asked = false);
  }, [fabrics, photos]);
  return found;
}
