import { listed } from '../../../measure/german-words.ts';
import { sentence } from '../../sentences.ts';
import type { StripPhrases } from '../strips.ts';

const cut = (cloths: readonly string[], height: string): string =>
  `Die ${height} hohen Streifen aus ${listed(cloths)} in Dreiecke schneiden, die Kopf an Fuß liegen: `;

export const strips: StripPhrases = {
  halves: (cloths, height, measure) =>
    sentence(
      `${cut(cloths, height)}vom geraden Ende aus ${measure} an der einen Kante abmessen und von dort im Winkel von 45° schräg zurück zur anderen Kante ` +
        `schneiden; von da aus ${measure} an dieser Kante weitermessen und gerade hinüberschneiden; so fortfahren. ` +
        `Die überstehende Spitze gerade abschneiden, sodass beide kurzen Seiten ${height} messen`,
    ),
  quarters: (cloths, height, measure, long) =>
    sentence(
      `${cut(cloths, height)}ein Ende im Winkel von 45° schräg abschneiden, von dessen Spitze aus ${measure} an der Kante abmessen und im Winkel von 45° ` +
        `schräg zurückschneiden; von da aus ${measure} an der anderen Kante weitermessen und so fortfahren. ` +
        `Die beiden scharfen Spitzen quer zur langen Seite gerade abschneiden, sodass diese ${long} misst`,
    ),
};
