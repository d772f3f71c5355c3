import { listed } from '../../../measure/german-words.ts';
import { numbers } from '../../../sewing/phrases/german/numbers.ts';
import type { AlsoPhrases } from '../also-phrases.ts';

export const also: AlsoPhrases = {
  foundations(sections) {
    const sewn = sections.filter(({ single }) => !single);
    const single = sections.filter((each) => each.single);
    const parts =
      sections.length === 1
        ? ''
        : ` ${sewn.length === 1 ? 'Es gibt einen Abschnitt' : `Es gibt ${sewn.length} Abschnitte`}: ` +
          `${listed(sewn.map(({ letter, pieces }) => `${letter} mit den Teilen ${numbers(pieces)}`))}` +
          `${single.length === 0 ? '' : `; ${listed(single.map(({ letter, pieces }) => `${letter}${numbers(pieces)}`))} ${single.length === 1 ? 'ist ein Teil' : 'sind Teile'} für sich`}.`;
    return (
      'Auf Vorlagen: in voller Größe drucken; sie sind das Spiegelbild, denn genäht wird von der bedruckten Seite, der Stoff liegt darunter.' +
      `${parts} Das erste Teil unter seine Zahl legen, die rechte Seite von der Vorlage weg. Jedes weitere rechts auf rechts darauflegen, auf der Linie ` +
      'dazwischen nähen, die Naht zurückschneiden, das Teil aufklappen und bügeln.' +
      `${sections.length === 1 ? '' : ' Dann die Abschnitte zuschneiden und zusammennähen.'}`
    );
  },
  chain(count, seams, explained) {
    if (seams === 'both sides') {
      return explained
        ? `Die ${count.said} Paare in einer Kette nähen: erst auf der einen Seite aller Linien, dann auf der anderen.`
        : `In einer Kette nähen: alle ${count.said} Paare nacheinander unter der Nadel durchführen, ohne den Faden zu schneiden, erst auf der einen ` +
            'Seite der Linien, dann auf der anderen; die Fäden dazwischen durchschneiden.';
    }
    if (seams === 'one') {
      return explained
        ? `Alle ${count.said} in einer Kette nähen.`
        : `In einer Kette nähen: alle ${count.said} nacheinander unter der Nadel durchführen, ohne den Faden zu schneiden; dann die Fäden dazwischen ` +
            'durchschneiden und bügeln.';
    }
    return explained
      ? `Alle ${count.said} in einer Kette nähen, von jeder Einheit eine Naht und dann die nächste.`
      : `In einer Kette nähen: die erste Naht aller ${count.said} nacheinander, ohne den Faden zu schneiden, die Fäden dazwischen durchschneiden und ` +
          'bügeln; dann die nächste Naht von allen, und so weiter.';
  },
};
