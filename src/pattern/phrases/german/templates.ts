import { listed, several } from '../../../measure/german-words.ts';
import type { TemplatePhrases } from '../template-phrases.ts';

export const TEMPLATES_IN_GERMAN: TemplatePhrases = {
  title: (name) => `${name}: Schablonen`,
  place: (page, pages) => `Schablonen, Seite ${page} von ${pages}`,
  alarm: 'Noch nicht zuschneiden: exakt nachgerechnet ergibt diese Anleitung nicht die Zeichnung.',
  size: (width, height) => `${width} × ${height}`,
  about: (size, blocks, seam) =>
    `Fertig ${size}; Zuschnitt für ${several(blocks, 'Block', 'Blöcke')}. Die Nahtzugabe von ${seam} ist enthalten. In Klammern: ` +
    'Nummern der Zuschnittliste.',
  lines:
    'Auf der durchgezogenen Linie schneiden, auf der gestrichelten nähen. An den Punkten kreuzen sich Nähte; der Pfeil zeigt den ' +
    'Fadenlauf.',
  reversed: 'Gespiegelt: mit gewendeter Schablone.',

  cut: (printed, reversed) =>
    `${printed === 0 ? `${reversed} gespiegelt` : reversed === 0 ? `${printed} ×` : `${printed} und ${reversed} gespiegelt`}`,
  fabric: (name, lines) => `${name} (Nr. ${listed(lines)})`,
  more: (fabrics) => `und ${fabrics} weitere Stoffe`,
  seeList: 'siehe Zuschnittliste',
  top: (counts) => `Oben am Muster: ${counts.join(', ')}`,

  part: (part, parts) => `Teil ${part} von ${parts}`,
  join: (template, part, uses) =>
    `${template}, ${part}: die Teile so übereinanderlegen, dass Linien mit gleichem Buchstaben sich decken, und zusammenkleben. ${uses}.`,

  measure: [
    'In Originalgröße drucken (100 %),',
    'nicht „an Seite anpassen“. Messen:',
    'das größere Quadrat hat 1 Zoll',
    'Seitenlänge, das kleinere 2 cm.',
    'Nur dann zuschneiden.',
  ],
  inch: '1 Zoll',
};
