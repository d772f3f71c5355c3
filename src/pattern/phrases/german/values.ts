import type { ValueWords } from '../kind-names.ts';

/** German-speaking quilters write HST, QST and HRT too, and keep "Flying Geese" in English (common practice). */
export const VALUES_IN_GERMAN: ValueWords = {
  kinds: {
    square: { one: 'Quadrat', many: 'Quadrate' },
    rectangle: { one: 'Rechteck', many: 'Rechtecke' },
    'half-square triangle': { one: 'Halbquadrat-Dreieck', many: 'Halbquadrat-Dreiecke', short: { one: 'HST', many: 'HSTs' } },
    'quarter-square triangle': { one: 'Viertelquadrat-Dreieck', many: 'Viertelquadrat-Dreiecke', short: { one: 'QST', many: 'QSTs' } },
    'split quarter-square triangle': {
      one: 'geteiltes Viertelquadrat-Dreieck',
      many: 'geteilte Viertelquadrat-Dreiecke',
      short: { one: 'geteiltes QST', many: 'geteilte QSTs' },
    },
    'flying geese': { one: 'Flying Geese', many: 'Flying Geese' },
    'corner-triangle unit': { one: 'Einheit mit Eckdreiecken', many: 'Einheiten mit Eckdreiecken' },
    'square in a square': { one: 'Quadrat im Quadrat', many: 'Quadrate im Quadrat' },
    'half-rectangle triangle': { one: 'Halbrechteck-Dreieck', many: 'Halbrechteck-Dreiecke', short: { one: 'HRT', many: 'HRTs' } },
    peak: { one: 'Dreieck im Quadrat', many: 'Dreiecke im Quadrat' },
    'joined unit': { one: 'zusammengesetzte Einheit', many: 'zusammengesetzte Einheiten' },
    'partial-seam ring': { one: 'Ring mit Teilnaht', many: 'Ringe mit Teilnaht' },
    'free unit': { one: 'freie Einheit', many: 'freie Einheiten' },
  },
  inches: 'Zoll',
  point: ',',
};
