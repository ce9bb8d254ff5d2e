import type { Dictionary } from '../dictionary';

export const referenceDe: Dictionary['reference'] = {
  atHand: 'Was liegt daneben?',
  choice: {
    card: {
      name: 'Gedruckte Karte',
      how: 'Die Verschraubung ins Fenster der Maßkarte legen, der ganze Ring aus Marken im Bild.',
      settles: 'Steigung und Durchmesser: etwa die Hälfte der Gewinde mit dem Foto allein.',
    },
    id1: {
      name: 'Bankkarte',
      how: 'Die Verschraubung fingerbreit neben der Karte auf den Tisch legen, alle vier Kanten im Bild. Am besten ein Bibliotheksausweis oder die Rückseite einer Bankkarte.',
      settles:
        'Steigung und ihr Verhältnis zum Durchmesser: die meisten Gewinde, hin und wieder mit einer Messung mehr.',
    },
    sheet: {
      name: 'Blatt Papier',
      how: 'Die Verschraubung mitten auf ein leeres Blatt legen, alle vier Kanten im Bild, der Tisch dunkler als das Blatt. Mit voller Auflösung aufnehmen.',
      settles: 'Gröbere Gewinde ab etwa M12; für kleine lässt das Blatt zu wenige Pixel.',
    },
    rule: {
      name: 'Lineal',
      how: 'Das Lineal neben die Verschraubung legen und senkrecht von oben aufnehmen, so weit weg, wie es scharf bleibt. Zwei Teilstriche werden danach markiert.',
      settles: 'Oft die Steigung; der Durchmesser bleibt offen, ein Messschieber klärt ihn.',
    },
  },
  settles: 'Klärt:',
  paper: 'Blattgröße',
  privacy:
    'Ihre Vorderseite wird auf diesem Gerät übermalt, bevor das Foto behalten wird. Keine Nummer wird gespeichert.',
  painted: 'Die Bankkarte ist in dem, was behalten wird, übermalt.',
  showCorners: 'Ihre Ecken zeigen',
  whatIsIt: 'Was ist es?',
  kind: { id1: 'Bankkarte (ID-1)', a4: 'A4-Blatt', letter: 'Letter-Blatt' },
  cornersText:
    'Die vier Marken dahin ziehen, wo die Seiten sich treffen: bei einer Karte außerhalb der runden Ecken. Die Kanten werden dann in ihrer Nähe gesucht.',
  corner: (n) => `Ecke ${n}`,
  markRule: 'Lineal markieren',
  markText:
    'Die zwei Marken auf zwei weit entfernte Teilstriche ziehen und eingeben, was dazwischen liegt. Die Lupe zeigt die Marke, die bewegt wird.',
  onScreen: {
    title: 'Größe auf diesem Bildschirm',
    lead: 'Eine Bankkarte auf den Bildschirm legen und schieben, bis der Rahmen genau so groß ist. Das bleibt für dieses Gerät gespeichert.',
    slider: 'Größe des Rahmens',
    smaller: 'Kleiner',
    larger: 'Größer',
    keep: 'Passt',
    again: 'Größe neu einstellen',
    tooSmall:
      'Die ganze Karte passt nicht auf diesen Bildschirm: Gerät drehen oder die Karte drucken.',
    shown: (percent) => `In ${percent} % der gedruckten Größe gezeigt.`,
    use: 'Diese Karte verwenden',
    name: (device) => `Auf diesem Bildschirm (${device})`,
    glass:
      'Die Verschraubung vorsichtig auf das Glas legen: eine klare Folie schützt vor Kratzern.',
  },
  camera: {
    inView: 'Karte oder Blatt im Bild',
    bring: {
      id1: 'Die Bankkarte in den Rahmen bringen, Verschraubung daneben',
      sheet: 'Das ganze Blatt in den Rahmen bringen',
      rule: 'Senkrecht von oben, Lineal und Gewinde im Bild',
    },
  },
};
