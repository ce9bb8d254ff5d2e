import type { Dictionary } from '../dictionary';

export const endDe: Dictionary['end'] = {
  either: 'Egal: das Foto zeigt es',
  ways: {
    standing:
      'Stehend: Mündung nach oben auf der gedruckten Karte, Kamera 30 bis 40° aus der Senkrechten, so dass sie die ferne Wand der Bohrung sieht.',
    lying:
      'Liegend (Schlauchenden): mit einer Sechskantfläche auf der gedruckten Karte, Mündung zu Ihnen, Kamera 30 bis 40° über dem Tisch; weniger sicher als stehend.',
  },
  inside: 'Das Gewinde ist innen',
  outside: 'Das Gewinde ist außen',
  refused: {
    'no-thread': {
      what: 'Der Maßstab wurde gefunden, aber kein Innengewinde.',
      todo: 'Das Teil mit der Mündung nach oben auf die gedruckte Karte stellen und schräg fotografieren, so dass die ferne Wand der Bohrung zu sehen und beleuchtet ist.',
    },
    'several-fittings': {
      what: 'Im Fenster liegt mehr als eine Verschraubung.',
      todo: 'Nur eine liegen lassen und neu fotografieren.',
    },
  },
  overCrests: 'über die Spitzen innen, wie sie sind',
  mouthHeight: 'Höhe der Mündung',
  rings: 'Ringe der Bohrung',
  shoot: {
    check: 'Schräg genug, um in die Bohrung zu sehen',
    tooLevel: 'Das Telefon neigen: die ferne Wand der Bohrung muss zu sehen sein',
    tooSlanted: 'Das Telefon weniger schräg halten',
  },
};
