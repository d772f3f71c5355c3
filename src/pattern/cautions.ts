/** The usual cautions for rotary cutter, needle and iron (restated from the safety sheets named in DEVELOPERS.md, Sources). */
export const CAUTIONS: readonly string[] = [
  'Close the rotary cutter after every cut; cut away from yourself, fingers behind the ruler’s edge, on a cutting mat.',
  'Cut standing, in closed shoes, with a sharp blade, and not when tired; keep blades, needles and pins away from children.',
  'Take pins out before they reach the needle; switch the machine off to thread it.',
  'Stand the iron on its heel, keep face and hands out of the steam, and unplug it when you leave.',
];

/** So many of them, the first, are about cutting; the others about sewing. */
export const ABOUT_CUTTING = 2;
