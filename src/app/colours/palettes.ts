import type { Look } from '../../block/block.ts';

/** Cloths that go together, to try a block in; named after what is seen from Kittiwake Point. */
export interface Palette {
  readonly name: string;
  readonly cloths: readonly Look[];
}

const palette = (name: string, ...cloths: readonly (readonly [string, string])[]): Palette => ({
  name,
  cloths: cloths.map(([cloth, color]) => ({ name: cloth, color })),
});

/** Each runs from light to dark, so that any three of them make shapes that read. */
export const PALETTES: readonly Palette[] = [
  palette('First light', ['Shell', '#f4e9dc'], ['Haze', '#d9c7c4'], ['Thrift', '#c98a96'], ['Slip', '#8a6f86'], ['Deep sound', '#3d4560']),
  palette('Slack water', ['Foam', '#eef2ef'], ['Shallows', '#bcd2cf'], ['Kelp', '#7f9a7a'], ['Channel', '#4b7480'], ['Fathom', '#1f3a48']),
  palette('Harbour', ['Limewash', '#f3efe4'], ['Manila', '#d8bf8e'], ['Oilskin', '#d9a521'], ['Brick quay', '#9c4a38'], ['Tar', '#2c2b2e']),
  palette('Cliff top', ['Guano', '#eceade'], ['Sea pink', '#dba3ab'], ['Lichen', '#b3a94f'], ['Heather', '#7d5a84'], ['Basalt', '#3a3f42']),
  palette('Night watch', ['Lamp', '#f6e7a8'], ['Moonpath', '#b9c3d0'], ['Buoy', '#b5342d'], ['Gloaming', '#4a5577'], ['Offing', '#141d33']),
];
