import type { FoundationPhrases } from '../foundation-phrases.ts';
import { TEMPLATES_IN_GERMAN } from './templates.ts';

export const foundations: FoundationPhrases = {
  measure: TEMPLATES_IN_GERMAN.measure,
  inch: TEMPLATES_IN_GERMAN.inch,
  title: (block) => `${block}: Nähvorlagen`,
  place: (page, pages) => `Nähvorlagen, Seite ${page} von ${pages}`,
  lines: (seam, blocks) => [
    'Jede Vorlage ist das Spiegelbild ihres Teils vom Block: Der Stoff liegt auf der unbedruckten Seite, genäht wird von der bedruckten.',
    'Auf den durchgezogenen Linien nähen, in der Reihenfolge der Zahlen; jede Naht zurückschneiden und bügeln, dann die nächste.',
    `Zuletzt an der äußeren Linie zuschneiden, ${seam} außerhalb der gestrichelten, die beim Zusammennähen genäht wird.` +
      (blocks > 1 ? ` ${blocks} Mal drucken: einmal für jeden Block.` : ''),
  ],
  alarm: 'Noch nicht nähen: Exakt zurückgerechnet ergibt diese Anleitung nicht die Zeichnung.',
  part: (section, part, parts) =>
    `${section}, Teil ${part} von ${parts}: die Teile so aufeinanderlegen, dass Linien mit demselben Buchstaben sich decken, und zusammenkleben.`,
  section: (letter) => (letter === '' ? 'Die Vorlage' : `Abschnitt ${letter}`),
};
