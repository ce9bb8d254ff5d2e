import type { WearWords } from './en';

export const wearDe: WearWords = {
  title: 'Ist dieses noch gut?',
  lead: 'Für gebrauchte Außengewinde: was gegen das Teil spricht und welche Lehre es zeigt. Nichts hier gibt ein Teil für Druck frei.',
  start: 'Gebrauchtes Gewinde prüfen',
  toSheet: 'Zum Blatt',
  stop: 'Diese Frage weglassen',
  stopped: 'Die Antworten zum Verschleiß sind weg.',
  femaleEnd:
    'Die Grenzmaße hier sind die von Außengewinden. Ein Innengewinde beurteilen sein Sitz und Gut- und Ausschuss-Lehrdorn.',
  thread: 'Gewinde, das es haben soll',
  threadHint: 'etwa 3/4-16 UNF',
  threadEmpty: 'Leer gelassen: das, welches das Foto findet.',
  threadUnknown:
    'Kein solches Gewinde in den Tabellen. Schreibweise wie 3/4-16 UNF, M22x1.5 oder G1/2.',
  threadMissing: 'Zuerst angeben, welches Gewinde es haben soll.',
  found: (name) => `Wie gefunden: ${name}`,
  candidate: (name, share) => `${name} · ${share}`,
  notFound: 'Das Gewinde steht nicht fest. Wählen Sie das, das dieses Teil haben soll.',
  class: 'Klasse',
  beforehand: 'Bevor Sie sich darauf verlassen',
  widthOf: (name, width, need) =>
    `Klasse ${name} ist über den Spitzen ${width} mm breit. Nur eine Messung, die sicherer ist als ± ${need} mm, kann eine Spitze innerhalb finden. Ein Messschieber an drei Stellen ist es (± 0,04 mm), ein Foto oft nicht.`,
  photoDecidesNothing: (u, width, by) =>
    `Dieses Foto ist auf ± ${u} mm genau, die Klasse ${width} mm breit: Kein Teil könnte als innerhalb erkannt werden. Es zeigt nur Spitzen, die mehr als ${by} mm außerhalb liegen.`,
  photoCanDecide: (u, width) =>
    `Dieses Foto ist auf ± ${u} mm genau, die Klasse ${width} mm breit: Es kann entscheiden, außer nahe einer Grenze.`,
  wouldDecide:
    'Über die Spitzen entscheidet ein Messschieber an drei Stellen, über das Gewinde Gut- und Ausschussring, über den Sitz das Auge oder eine Sitzlehre.',
  taperNote:
    'Ein kegeliges Gewinde wird danach beurteilt, wie weit sein Lehrring aufläuft, nicht nach seinen Spitzen. Kein Foto entscheidet das.',
  noClass:
    'Die Grenzmaße dieses Gewindes stehen nicht in diesen Tabellen. Gut- und Ausschussring entscheiden.',
  photoTitle: 'Mit einem Foto',
  photoText: 'Zeigt die Höhe jeder Spitze. Am besten groß, scharf und von oben, auf der Maßkarte.',
  readingsTitle: 'Nur mit Messwerten',
  readingsText:
    'Ansehen, von Hand drehen, lehren und den Messschieber an drei Stellen über die Spitzen legen.',
  goOn: 'Weiter mit Messwerten',
  finding: 'Befund',
  levels: {
    replace: 'Ersetzen',
    gauge: 'Vor dem Einbau lehren',
    none: 'Bisher kein Befund',
    nothing: 'Noch nichts angesehen',
  },
  levelText: {
    replace: 'Der schwerste der Gründe unten entscheidet.',
    gauge: 'Was gesehen wurde, verwirft das Teil nicht und lässt es nicht durch.',
    none: 'Nichts von dem, was angesehen wurde, spricht dagegen. Das besteht das Gewinde nicht und gibt es nicht für Druck frei.',
    nothing: 'Von oben nach unten beantworten: In dieser Reihenfolge sieht das Handwerk hin.',
  },
  shortLevels: { replace: 'ersetzen', gauge: 'lehren', none: 'nichts dagegen' },
  notLooked: 'Nicht angesehen',
  reasons: {
    'seal-scratched': 'Dichtfläche zerkratzt: Sie dichtet nicht wieder.',
    'turns-torn':
      'Erste Gänge ausgerissen oder umgelegt: Sie würden das Gegengewinde aufschneiden.',
    'turns-burred': 'Erste Gänge mit Grat: Grat entfernen, dann lehren.',
    'first-turns-short':
      'Die ersten Spitzen stehen auf dem Foto niedriger als die übrigen: nach ausgerissenen oder umgelegten Gängen sehen.',
    rocks: 'Wackelt auf dem Gegenstück: Flanken verschlissen. Die Ringe entscheiden.',
    stiff: 'Läuft schwer: Grat, Schmutz, verbogen oder anderes Gewinde. Reinigen, dann lehren.',
    'not-go-beyond':
      'Ausschussring läuft über zwei Gänge auf: Der Flankendurchmesser ist zu klein.',
    'go-stops': 'Gutring stockt: Übermaß, verbogen, beschädigt oder anderes Gewinde.',
    'plane-deep': 'Läuft deutlich zu tief in seinen Lehrring: verschlissen.',
    'plane-short':
      'Läuft nicht so weit in seinen Lehrring, wie es soll: Übermaß, beschädigt oder anderes Gewinde.',
    'plane-open': 'An der Grenze des Lehrrings: sauber und noch einmal ablesen.',
    'plane-within': 'Der Lehrring kommt innerhalb seiner Grenzen zur Ruhe.',
    'another-thread': 'Das Foto zeigt eine andere Steigung als die dieses Gewindes.',
    'crests-short':
      'Auf dem Foto scheinen einzelne Spitzen niedriger als die übrigen: dort nach Dellen und Ausrissen sehen; ein Glanzlicht kann ebenso aussehen.',
    uneven: 'Ungleichmäßig: Der Durchmesser ist rundum oder der Länge nach verschieden.',
    'crest-below':
      'Spitzen unter ihrer Klasse. Der mildeste Befund: Über Festigkeit und Sitz entscheiden die Ringe.',
    'crest-below-rings-pass':
      'Spitzen unter ihrer Klasse, aber beide Ringe bestanden: Es trägt weniger von der Spitze.',
    'crest-above': 'Spitzen über ihrer Klasse: Grat, Überzug oder anderes Gewinde.',
    'crest-open': 'Spitzen: nicht entschieden.',
    'crest-within': 'Spitzen innerhalb ihrer Klasse. Damit besteht das Gewinde nicht.',
  },
  questions: {
    seal: {
      name: 'Dichtfläche',
      how: 'Kegel, Nut oder Planfläche im Streiflicht. Mit dem Fingernagel quer darüber: Ein Kratzer quer zur Dichtung, an dem er hängen bleibt, ist das Ende.',
      answers: { unmarked: 'ohne Spuren', scratched: 'zerkratzt' },
    },
    firstTurns: {
      name: 'Die ersten zwei, drei Gänge',
      how: 'Bis zur Spitze ganz, ohne umgelegte Kante, Grat oder Abflachung?',
      answers: { whole: 'ganz', burred: 'mit Grat', torn: 'ausgerissen oder umgelegt' },
    },
    byHand: {
      name: 'Von Hand',
      how: 'Sauber ein gutes Gegenstück über die ganze Länge aufschrauben. Dann versuchen, es zu kippen.',
      answers: { free: 'läuft frei, wackelt nicht', stiff: 'schwer', rocks: 'wackelt' },
    },
    goRing: {
      name: 'Gutring',
      how: 'Läuft von Hand über das ganze Gewinde (ISO 1502, ASME B1.2)?',
      answers: { 'runs-on': 'läuft auf', stops: 'stockt' },
    },
    notGoRing: {
      name: 'Ausschussring',
      how: 'Von Hand, ohne Kraft: höchstens zwei Gänge (ISO 1502).',
      answers: {
        holds: 'hält innerhalb von zwei Gängen',
        'beyond-two': 'läuft über zwei Gänge auf',
      },
    },
  },
  notLookedAt: 'nicht angesehen',
  caliper: 'Messschieber über den Spitzen',
  caliperHow: 'Schenkel rechtwinklig zur Achse, an drei Stellen. Je das größte von drei Maßen.',
  places: { end: 'Freies Ende', middle: 'Mitte', last: 'Letzter voller Gang' },
  ring: 'Lehrring des Kegels',
  ringHow:
    'Ring handfest aufschrauben. Wo steht das kleine Ende, in Gängen von der Stirnfläche des Rings?',
  ringPast: 'Gänge über die Fläche hinaus',
  ringShort: 'Gänge davor',
  ringTurns: 'Gänge',
  ringWrong: 'Eine Zahl von Gängen zwischen 0 und 100 eingeben, etwa 1,5.',
  clear: 'Leeren',
  crests: 'Spitzen',
  verdicts: {
    within: 'Innerhalb der Klasse. Das gilt der Spitze allein; das Gewinde besteht damit nicht.',
    below: (by) => `${by} mm unter der Klasse.`,
    above: (by) => `${by} mm über der Klasse: Grat, Überzug oder anderes Gewinde.`,
  },
  undecided: {
    'near-limit': 'Nicht zu entscheiden: für diese Unsicherheit zu nah an einer Grenze.',
    'too-uncertain': 'Nicht zu entscheiden: Die Messung ist unsicherer, als die Klasse breit ist.',
    tapered: 'Ein kegeliges Gewinde beurteilt sein Lehrring, nicht die Spitze.',
    'no-class': 'Die Grenzmaße dieses Gewindes stehen nicht in diesen Tabellen.',
    'another-pitch':
      'Nicht beurteilt: Das Foto zeigt eine andere Steigung als die dieses Gewindes.',
    unresolved: 'Das Foto löst den Durchmesser nicht auf.',
    'places-missing':
      'Was gemessen wurde, liegt innerhalb; die übrigen Stellen sind noch zu messen.',
  },
  by: { photo: 'Foto', caliper: 'Messschieber' },
  rule: 'Entschieden bei 95 % mit einem Schutzband von 1,65 u (ISO 14253-1). ± ist das 95-%-Intervall.',
  scale: (name, from, to) => `Klasse ${name}: ${from} bis ${to} mm über den Spitzen`,
  pitchDiameterOf: (from, to) =>
    `Flankendurchmesser ${from} bis ${to} mm: Das beurteilen die Ringe, nicht das Foto.`,
  flank: (seen, nominal) => `Flankenwinkel ${seen}; nach Norm ${nominal}.`,
  flankOpen: 'Flankenform: nicht aufgelöst.',
  chart: 'Höhe jeder Spitze',
  chartText:
    'Radius jeder Spitze mit ihrem ±; dick: was sie nicht mit den anderen teilt. Dahinter die Klasse.',
  chartFrom:
    'Gezählt vom freien Ende des gemessenen Stücks. Was das Foto nicht zeigt, ist nicht beurteilt.',
  chartName: (count, short) =>
    `Höhen von ${count} Spitzen; ${short} stehen niedriger als die übrigen`,
  chartNone:
    'Keine einzelnen Spitzen auf diesem Blatt: Neben einem Lineal oder in einem Bild aus einem Messenger werden sie nicht gemessen.',
  alongAxis: 'mm vom freien Ende',
  sides: { left: 'linke Seite', right: 'rechte Seite' },
  band: 'Klasse',
  turn: 'Gang',
  side: 'Seite',
  at: 'Bei',
  height: 'Höhe',
  short: 'Niedriger als die übrigen um',
  list: 'Als Liste',
  marks: 'Auf dem Foto markiert',
  markShort: 'niedriger als die übrigen: ausgerissen, umgelegt oder Delle',
  markBelow: 'unter der Klasse: abgeflacht',
  noMarks: 'Keine Spitze ist niedriger als die übrigen oder unter ihrer Klasse.',
  bears: 'Was noch trägt',
  overlap: (left, limit, share) =>
    `Je Seite tragen noch ${left} mm der Spitze über der weitesten Bohrung: ${share} der ${limit} mm an der Klassengrenze.`,
  overlapNone: 'Nichts von der Spitze reicht über die weiteste Bohrung.',
  overlapNote: 'Die Festigkeit hängt am Flankendurchmesser, den die Ringe beurteilen.',
  overlapName: (name) =>
    `Halbschnitt von ${name} im Gegenstück, maßstäblich: dick die Flanke, die noch trägt; gestrichelt die Spitze an der Klassengrenze`,
  overlapKeys: {
    internal: 'Gegenstück, weiteste Bohrung',
    external: 'dieses Teil',
    limit: 'Spitze an der Klassengrenze',
  },
  round: 'Rundum',
  roundOne:
    'Ein Foto zeigt einen Durchmesser. Das Teil um ein Viertel drehen und noch eines machen.',
  roundEven: (apart) => `Die Fotos unterscheiden sich um ${apart} mm: nicht mehr als Zufall.`,
  roundUneven: (apart) =>
    `Die Fotos unterscheiden sich um ${apart} mm: ungleich verschlissen oder nicht dasselbe Teil. Der kleinere Durchmesser zählt.`,
  addQuarter: 'Foto hinzufügen, um ein Viertel gedreht',
  takeQuarter: 'Eines aufnehmen, um ein Viertel gedreht',
  confirm:
    'Drucklos machen, bevor etwas gelöst wird. Lehren, bevor Druck darauf kommt. O-Ringe immer neu.',
  onSheet: (level) => `Noch gut? ${level}`,
};
