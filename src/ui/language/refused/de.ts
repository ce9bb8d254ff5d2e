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
      todo: 'Die Verschraubung flach ins Fenster legen, Gewinde frei; ist es kaum zu sehen, das andere Feld der Karte nehmen (hell oder dunkel).',
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
      todo: 'Das Foto in voller Größe senden oder näher heran, solange der Ring im Bild bleibt.',
    },
    'cut-off': {
      what: 'Das Gewinde ragt aus dem Bild oder aus dem Fenster.',
      todo: 'Die Verschraubung so legen, dass das ganze Gewinde im Fenster liegt.',
    },
    'several-fittings': {
      what: 'Im Fenster liegt mehr als eine Verschraubung.',
      todo: 'Nur eine liegen lassen und neu fotografieren.',
    },
    'card-mirrored': {
      what: 'Die Karte erscheint gespiegelt.',
      todo: 'Direkt fotografieren, nicht über einen Spiegel oder die Selbstbildvorschau.',
    },
    unreadable: {
      what: 'Diese Datei lässt sich nicht als Foto lesen.',
      todo: 'Das Originalfoto als JPEG, PNG oder WebP wählen.',
    },
    'unsupported-format': {
      what: 'Dieser Browser kann diese Art Foto nicht öffnen.',
      todo: 'Am Telefon die Kamera auf „maximal kompatibel“ (JPEG) stellen oder das Foto als JPEG teilen.',
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
