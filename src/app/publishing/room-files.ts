/** Files of one pattern besides its pages. */
export type FileKind = 'text' | 'cuts' | 'data' | 'pictures' | 'pieces';

interface FileWords {
  readonly words: string;
  readonly what: string;
  readonly ending: string;
  readonly type: string;
}

/** What each is called, and how its file is. */
export const FILES: Readonly<Record<FileKind, FileWords>> = {
  text: { words: 'Text (Markdown)', what: 'every sentence, for your own layout', ending: '-pattern.md', type: 'text/markdown' },
  pictures: { words: 'Pictures (zip)', what: 'every drawing as SVG and PNG', ending: '-pictures.zip', type: 'application/zip' },
  cuts: { words: 'Cutting list (CSV)', what: 'for a table of figures', ending: '-cutting.csv', type: 'text/csv' },
  pieces: {
    words: 'Pieces (SVG)',
    what: 'with their allowance at true size, for cutting machines',
    ending: '-pieces.svg',
    type: 'image/svg+xml',
  },
  data: { words: 'Data (JSON)', what: 'for other programs', ending: '-pattern.json', type: 'application/json' },
};
