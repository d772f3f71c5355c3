/** So many of the usual cautions, the first, are about cutting; the others about sewing. In words: `WrittenPhrases.cautions`. */
export const ABOUT_CUTTING = 2;
