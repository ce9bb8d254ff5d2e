import type { Widen } from '../widen';
import type { ShootWords } from './en';

export const shootDe: Widen<ShootWords> = {
  title: 'Geführte Kamera',
  again: 'Kamera noch einmal versuchen',
  taking: 'Wird aufgenommen',
  contrastOnDark: 'Gewinde kaum zu sehen: Licht von der Seite geben',
  noCamera: 'Hier ist keine Kamera nutzbar. Nehmen Sie das Foto mit dem Knopf darunter auf.',
  denied:
    'Die Kamera wurde nicht erlaubt. Im Browser erlauben oder das Foto mit dem Knopf darunter aufnehmen.',
  noGuide: 'Keine Führung auf diesem Gerät: auslösen, wenn der ganze Ring im Bild ist.',
  hold: 'Ruhig halten',
  shot: 'Aufgenommen',
  byHand: 'Jetzt auslösen',
  auto: 'Von selbst auslösen, wenn alles stimmt',
  torch: 'Leuchte',
  full: 'Foto in voller Auflösung',
  viewfinder: 'Was die Kamera sieht',
  checks: {
    card: 'Karte im Bild',
    tilt: 'Gerade genug von oben',
    distance: 'Weit genug weg',
    light: 'Genug Licht',
    still: 'Ruhig gehalten',
    contrast: 'Gewinde hebt sich ab',
    inside: 'Verschraubung im Fenster',
  },
  hints: {
    card: 'Den ganzen Ring aus Marken ins Bild bringen',
    tilt: 'Das Telefon waagrechter halten',
    distance: 'Etwas weiter weg',
    light: 'Mehr Licht',
    still: 'Ruhig halten',
    contrast: 'Gewinde kaum zu sehen: Licht von der Seite oder das dunkle Feld',
    inside: 'Die Verschraubung ins Fenster rücken',
    loading: 'Die Führung wird geladen',
  },
  good: 'gut',
  bad: 'noch nicht',
};
