import type { Widen } from '../widen';
import type { RefusedWords } from './en';

export const refusedDe: Widen<RefusedWords> = {
  title: 'Nicht gemessen',
  retry: 'Anderes Foto',
  retake: 'Neu aufnehmen',
  byHand: 'Von Hand zeigen',
  byRule: 'Lineal verwenden',
  readings: 'Stattdessen Messwerte eingeben',
  ruleMarks: {
    what: 'Die zwei Marken ergeben keinen Maßstab.',
    todo: 'Auf zwei weit entfernte Teilstriche im Foto setzen, und den Abstand und seine Einheit prüfen.',
  },
  cornerMarks: {
    what: 'Die vier gezeigten Ecken ergeben keinen Maßstab.',
    todo: 'Jede Marke dorthin setzen, wo zwei Seiten sich treffen, und angeben, was es ist. Stehen sie schon dort, das Foto neben einer Bankkarte oder auf der gedruckten Karte wiederholen oder Messwerte eingeben.',
  },
  axisMarks: {
    what: 'Wo das Gewinde gezeigt wurde, lässt sich keines messen.',
    todo: 'A ans freie Ende und B an den letzten vollen Gang setzen, beide auf die Mitte des Gewindes. Stehen sie schon dort, zeigt das Foto zu wenig: näher heran, mit Licht von der Seite, oder Messwerte eingeben.',
  },
  brightOnLight:
    'Auf hellem Grund verblasst ein blankes oder verzinktes Teil: Das dunkle Feld der Karte zeigt es besser.',
  reasons: {
    'no-card': {
      what: 'Keine Maßkarte gefunden.',
      todo: 'Die Verschraubung auf die gedruckte Karte, neben eine Bankkarte oder auf ein leeres Blatt legen und alles davon ins Bild nehmen; oder von Hand zeigen.',
    },
    'business-card': {
      what: 'Das hat die Form einer Visitenkarte.',
      todo: 'Visitenkarten gibt es in vielen Größen. Eine Bank- oder Bibliothekskarte, ein leeres A4- oder Letter-Blatt oder die gedruckte Karte verwenden.',
    },
    banknote: {
      what: 'Das hat die Form eines Geldscheins.',
      todo: 'Scheine sind zum Messen zu ungenau geschnitten. Eine Bank- oder Bibliothekskarte, ein leeres A4- oder Letter-Blatt oder die gedruckte Karte verwenden.',
    },
    'other-rectangle': {
      what: 'Von dieser Karte oder diesem Blatt ist die Größe nicht bekannt.',
      todo: 'Eine Bank- oder Bibliothekskarte, ein leeres A4- oder Letter-Blatt oder die gedruckte Karte verwenden.',
    },
    'which-reference': {
      what: 'Es ist nicht sicher, was für eine Karte oder was für ein Blatt das ist.',
      todo: 'Angeben, was es ist; dann wird noch einmal gemessen.',
    },
    'no-thread': {
      what: 'Der Maßstab wurde gefunden, aber kein Gewinde.',
      todo: 'Die Verschraubung flach hinlegen, das Gewinde frei und ganz im Bild, mit Licht von der Seite und ohne Glanz; oder von Hand zeigen, wo das Gewinde ist.',
    },
    'too-few-turns': {
      what: 'Es sind zu wenige Gewindegänge zu sehen.',
      todo: 'Mindestens vier Gänge zeigen: Muttern und Kappen abnehmen, das Gewinde zur Mitte drehen.',
    },
    'too-blurred': {
      what: 'Das Foto ist unscharf.',
      todo: 'Ruhig halten oder die Ellbogen aufstützen, mehr Licht, zum Scharfstellen auf das Gewinde tippen.',
    },
    'too-coarse': {
      what: 'Das Gewinde hat zu wenige Bildpunkte.',
      todo: 'Das Foto in voller Größe senden statt einer Vorschau, oder näher heran, solange der Ring im Bild bleibt.',
    },
    'cut-off': {
      what: 'Ein Teil liegt außerhalb des Fotos oder des Fensters.',
      todo: 'Die Karte wurde gefunden, aber nicht das ganze Gewinde: die Verschraubung in die Mitte des Fensters legen und den ganzen Ring im Bild lassen.',
    },
    'several-fittings': {
      what: 'Im Fenster liegt mehr als eine Verschraubung.',
      todo: 'Nur eine liegen lassen und neu fotografieren, oder von Hand zeigen, welche gemeint ist.',
    },
    'card-mirrored': {
      what: 'Die Karte erscheint gespiegelt.',
      todo: 'Direkt fotografieren, nicht über einen Spiegel oder die Selbstbildvorschau.',
    },
    unreadable: {
      what: 'Diese Datei lässt sich nicht als Foto lesen.',
      todo: 'Das Originalfoto wählen: JPEG, PNG, WebP, HEIC oder AVIF. Kam es per Mail oder Messenger, noch einmal schicken lassen.',
    },
    'unsupported-format': {
      what: 'Diese Art Datei lässt sich hier nicht öffnen.',
      todo: 'Als Foto teilen oder sichern (JPEG, PNG, WebP, HEIC oder AVIF) und dieses wählen.',
    },
    'decoder-missing': {
      what: 'Dieses Foto braucht einen Teil der Seite, der noch nicht geladen ist.',
      todo: 'Mit dem Netz verbinden und noch einmal messen: Der Teil bleibt dann auf diesem Gerät. Oder das Foto als JPEG teilen.',
    },
    'too-large': {
      what: 'Das Foto ist für dieses Gerät zu groß.',
      todo: 'Eine kleinere Kameraauflösung wählen, etwa 12 Megapixel.',
    },
  },
  other: {
    what: 'Das Foto konnte nicht gemessen werden.',
    todo: 'Versuchen Sie ein anderes Foto.',
  },
  detail: 'Im Einzelnen',
};
