import { notesDe } from '../notes/de';
import type { Trade } from './trade';

export const tradeDe: Trade = {
  gender: { male: 'Außengewinde', female: 'Innengewinde' },
  endTypes: {
    fixed: 'fest',
    'swivel-nut': 'Überwurfmutter, drehbar',
    'tube-nut': 'Rohrmutter',
    stud: 'Einschraubzapfen',
    port: 'Einschraubloch',
    'flange-head': 'Flanschkopf',
  },
  ordered: {
    fixed: 'Festes Ende',
    'swivel-nut': 'Überwurfmutter, drehbar',
    'tube-nut': 'Rohrmutter',
    stud: 'Einschraubzapfen',
    port: 'Einschraubloch',
    'flange-head': 'Flanschkopf',
  },
  or: 'oder',
  form: (form) => `Form ${form}`,
  size: (size) => `Größe ${size}`,
  orderLine: 'Bestellangabe',
  toAdd: {
    stud: 'Noch anzugeben: Werkstoff, und ob fest oder einstellbar.',
    other: 'Noch anzugeben: der Werkstoff.',
  },
  oRingOrdered: (designation, hardness) =>
    `O-Ring ${designation}${hardness && `, NBR ${hardness}`}`,
  inTheMate: (ring) => `im Gegenstück mit Außengewinde: ${ring}`,
  inTheStud: (ring) => `auf dem Zapfen, der hineingehört: ${ring}`,
  captive: 'Nuten gibt es offen und haltend; beide nehmen diesen Ring.',
  alsoCalled: 'Auch genannt',
  leftHand: 'Linksgewinde (LH)',
  leftHandWarning:
    'Es schraubt sich gegen den Uhrzeigersinn auf. Kein gewöhnliches Teil dieser Größe passt: als LH bestellen, nie ein rechtsgängiges Teil aufzwingen.',
  nearest: (thread, off, large, male) =>
    `Nichts passt. Am nächsten liegt ${thread}; für ein ${male ? 'Außengewinde' : 'Innengewinde'} ist dies ${off} zu ${large ? 'groß' : 'klein'}.`,
  missing: (reading, tools) =>
    `Nichts, was zur Hand ist, entscheidet es. Was es entscheiden würde: ${reading}${tools && ` (${tools})`}.`,
  cannotTell: 'Kann ich nicht sagen',
  cannotTellOf: (what) => `Nicht zu sagen: ${what}`,
  dryseal:
    'Am Gewinde ist NPTF nicht von NPT zu unterscheiden: am Teil nach dem Zeichen NPTF suchen.',
  notes: 'Erkennen und nicht verwechseln',
  also: 'Auch mit diesem Gewinde',
  alsoUsed: {
    banjo: 'Auch Hohlschrauben: Querbohrung, und ein Dichtring auf beiden Seiten des Auges.',
    'universal-nose':
      'Schlauchenden mit Universaldichtkopf passen in den 24°- und den 60°-Kegel: den Dichtkopf selbst ansehen.',
    'jis-cone-60':
      'JIS B 8363 kennt auch Außengewinde mit hohlem 60°-Sitz; ob Muttern nach BS 5200 darauf dichten, hängt an der Gewindelänge.',
  },
  pressure: {
    title: 'Betriebsdruck',
    none: 'Hier nicht angegeben: Er hängt von Norm, Ausgabe, Größe und Ausführung ab. Es gilt die Angabe des Herstellers, und der niedrigste aller Teile.',
  },
  never: {
    title: 'Nie verbinden mit',
    'same-thread': (names) => `Gleiches Gewinde, andere Dichtung: ${names}`,
    'near-thread': (names) => `Lässt sich anschrauben, reißt aus oder leckt: ${names}`,
    'npt-r':
      'NPT und R haben andere Flankenwinkel (60° und 55°) und in den meisten Größen andere Steigungen: Sie klemmen und lecken.',
    'taper-in-g':
      'Ein kegeliges Außengewinde gehört nie in ein Einschraubloch G: Dort dichtet kein Gewinde, und es sprengt das Loch.',
    'nptf-npt':
      'NPTF dichtet nur mit NPTF trocken; mit NPT braucht es Dichtmittel und ist keine trockene Verbindung.',
    'npsm-npt':
      'Eine NPSM-Mutter dichtet nur auf einem NPT-Ende mit 60°-Sitz im Innern, nie auf dessen Gewinde.',
    'flange-series': 'Code 61 und Code 62: Köpfe und Schrauben sind verschieden, die Drücke auch.',
  },
  sealings: {
    'face-seal': 'O-Ring in der planen Fläche',
    flare: 'Metall auf Metall, Kegel in Bördel',
    inverted: 'Metall auf Metall, gebördeltes Rohr auf dem erhabenen Kegel im Loch',
    'stud-o-ring': 'O-Ring zwischen Gewinde und Sechskant, in der Fase des Einschraublochs',
    'face-ring': 'Ring auf der planen Fläche um das Einschraubloch',
    'cutting-edge': 'Dichtkante auf der planen Fläche um das Einschraubloch',
    'cone-24': 'Schneidring oder O-Ring eines 24°-Kegels im 24°-Kegel',
    'cone-24-hose': 'O-Ring des 24°-Kegels oder Metall auf Metall im 24°-Kegel',
    'cone-swivel': 'Metall auf Metall, Kegel in Kegel',
    npsm: 'Metall auf Metall, auf dem 60°-Sitz im Außengewinde-Ende; nicht im Gewinde',
    'taper-iso': 'Gewinde in Gewinde, mit Dichtmittel',
    'taper-npt': 'Gewinde in Gewinde, mit Dichtmittel',
    'taper-metric': 'Gewinde in Gewinde, mit Dichtmittel',
    'test-point': 'O-Ring am Ventil im Innern',
    washer: 'lose Dichtscheibe unter dem Bund',
    dryseal: 'Gewinde in Gewinde, Spitze auf Grund',
    compression: 'Klemmring, auf das Rohr gepresst',
    gauge: 'Dichtscheibe unter dem Zapfen, am Grund des Lochs',
    flange: 'O-Ring in der planen Fläche des Flanschkopfs',
  },
  mates: {
    'face-seal': {
      male: 'Überwurf- oder Rohrmutter mit planer Hülse gleicher Größe',
      female: 'Außengewinde mit O-Ring in der planen Fläche, gleiche Größe',
    },
    flare: {
      male: 'Überwurfmutter, oder Rohrmutter über gebördeltem Rohr, gleicher Winkel und gleiche Größe',
      female: 'Außengewinde mit Kegel gleichen Winkels und gleicher Größe',
    },
    inverted: {
      male: 'Loch mit erhabenem Kegel am Grund, gleiche Größe, das gebördelte Rohr dazwischen',
      female: 'Rohrmutter gleicher Größe über gebördeltem Rohr',
    },
    'stud-o-ring': {
      male: 'Einschraubloch mit gleichem Gewinde und Fase für den Ring',
      female: 'Einschraubzapfen mit O-Ring und gleichem Gewinde',
    },
    'face-ring': {
      male: 'Einschraubloch mit gleichem Gewinde und planer bearbeiteter Fläche',
      female:
        'Einschraubzapfen mit gleichem Gewinde und Ring oder Kante am Bund; bei G auch ein Außengewinde mit Gummi-Metall-Dichtscheibe',
    },
    'cutting-edge': {
      male: 'Einschraubloch mit gleichem Gewinde und planer bearbeiteter Fläche',
      female: 'Einschraubzapfen mit gleichem Gewinde und Dichtkante am Bund',
    },
    'cone-24': {
      male: 'Mutter gleicher Reihe und gleichen Gewindes mit Schneidring und Rohr, oder Schlauchende mit 24°-Kegel und O-Ring',
      female: 'Außengewinde mit 24°-Kegel, gleiche Reihe und gleiches Gewinde',
    },
    'cone-24-hose': {
      male: 'Schlauchende mit 24°-Kegel und O-Ring, gleiche Reihe und gleiches Gewinde',
      female: 'Außengewinde mit 24°-Kegel, gleiche Reihe und gleiches Gewinde',
    },
    'cone-swivel': {
      male: 'Überwurfmutter mit gleichem Gewinde und Sitzwinkel',
      female: 'Außengewinde mit gleichem Gewinde und Sitzwinkel',
    },
    npsm: {
      male: 'drehbare NPSM-Mutter gleicher Größe',
      female: 'NPT-Außengewinde gleicher Größe mit 60°-Sitz im Innern',
    },
    'taper-iso': {
      male: 'kegeliges (Rc) oder zylindrisches (Rp) Innengewinde nach ISO 7-1; nie ein Einschraubloch G',
      female: 'kegeliges Außengewinde (R) nach ISO 7-1',
    },
    'taper-npt': {
      male: 'NPT-Innengewinde gleicher Größe',
      female: 'NPT-Außengewinde gleicher Größe',
    },
    'taper-metric': {
      male: 'zylindrisches metrisches Loch für kegelige Zapfen (Form Z), gleiche Größe',
      female: 'kegeliger Einschraubzapfen gleicher Größe',
    },
    'test-point': {
      male: 'Mutter eines Messschlauchs, M16x2',
      female: 'Messanschluss, M16x2',
    },
    washer: {
      male: 'Einschraubloch mit gleichem Gewinde und planer bearbeiteter Fläche',
      female: 'Einschraubzapfen mit gleichem Gewinde und loser Dichtscheibe am Bund',
    },
    dryseal: {
      male: 'NPTF-Innengewinde gleicher Größe',
      female: 'NPTF-Außengewinde gleicher Größe',
    },
    compression: {
      male: 'Mutter und Klemmring gleicher Größe auf glattem Rohr',
      female: 'Körper gleicher Größe mit gleichem Gewinde, Klemmring und Rohr',
    },
    gauge: {
      male: 'Manometerloch mit gleichem Gewinde und planem Grund für die Scheibe',
      female: 'Manometer mit gleichem Gewinde',
    },
    flange: {
      male: 'Anschraubfläche mit vier Schrauben und zwei Flanschhälften gleichen Codes und gleicher Größe',
      female: 'Flanschkopf gleichen Codes und gleicher Größe',
    },
  },
  methods: {
    'face-seal': 'Angezogen nach Drehmoment.',
    flare: 'Angezogen nach Schlüsselflächen ab handfest oder nach Drehmoment.',
    inverted: 'Angezogen um einen Drehwinkel ab handfest.',
    'stud-o-ring': 'Angezogen nach Drehmoment.',
    'face-ring': 'Angezogen nach Drehmoment.',
    'cutting-edge': 'Angezogen nach Drehmoment.',
    'cone-24': 'Angezogen um einen Drehwinkel ab dem festen Punkt.',
    'cone-24-hose': 'Angezogen um einen Drehwinkel ab dem festen Punkt oder nach Drehmoment.',
    'cone-swivel': 'Angezogen nach Drehmoment.',
    npsm: 'Angezogen nach Drehmoment.',
    'taper-iso': 'Angezogen um Umdrehungen über handfest.',
    'taper-npt': 'Angezogen um Umdrehungen über handfest.',
    'taper-metric': 'Angezogen um Umdrehungen über handfest.',
    'test-point': 'Von Hand angezogen.',
    washer: 'Angezogen nach Drehmoment.',
    dryseal: 'Angezogen um Umdrehungen über handfest.',
    compression: 'Angezogen um einen Drehwinkel ab handfest.',
    gauge: 'Angezogen nach Drehmoment, am Vierkant des Manometers, nie am Gehäuse.',
    flange: 'Angezogen nach Drehmoment, über Kreuz.',
  },
  always: {
    pressure: 'Nie eine Verbindung nachziehen, die unter Druck steht.',
    spanner:
      'Den Körper mit einem zweiten Schlüssel halten, damit sich weder Rohr noch Schlauch verdreht.',
    ring: 'Jedes Mal einen neuen O-Ring oder Ring einsetzen.',
    leak: 'Nicht weiter anziehen, um eine Leckage zu beseitigen: lösen und die Sitze ansehen.',
  },
  steps: {
    'face-seal': [
      'Beide Flächen reinigen. Einen neuen O-Ring leicht geölt und unverdreht in die Nut legen.',
      'Die plane Hülse fluchtend an die Fläche führen, die Mutter von Hand aufschrauben.',
      'Mit einem zweiten Schlüssel gegenhalten und mit dem Drehmoment des Herstellers anziehen.',
    ],
    flare: [
      'Bördel und Kegel auf Riefen, Risse und einen vollen Berührring prüfen.',
      'Gewinde und Kegel ölen, die Mutter von Hand aufschrauben, bis die Sitze anliegen.',
      'Gegenhalten und nach Schlüsselflächen ab handfest oder Drehmoment des Herstellers anziehen.',
    ],
    inverted: [
      'Die Bördel des Rohrs und den Kegel am Grund des Lochs prüfen; eine gezeichnete Bördel abschneiden und neu machen.',
      'Das Rohr fluchten und die Mutter von Hand einschrauben, bis die Bördel anliegt.',
      'Um den Drehwinkel des Herstellers anziehen.',
    ],
    'stud-o-ring': [
      'Die Fase des Einschraublochs ansehen. Einen neuen O-Ring ölen und mit einer Hülse über das Gewinde führen.',
      'Festes Ende: von Hand einschrauben, bis der Bund anliegt, dann mit dem Drehmoment des Herstellers anziehen.',
      'Einstellbares Ende: die Kontermutter ganz zurückdrehen, die Scheibe nach oben; von Hand einschrauben, bis die Scheibe anliegt, zum Ausrichten höchstens eine Umdrehung zurück, halten und die Kontermutter mit dem Drehmoment des Herstellers anziehen.',
    ],
    'face-ring': [
      'Die plane Fläche um das Einschraubloch reinigen; keine Riefe darf sie queren.',
      'Einen neuen Ring auflegen, ölen und von Hand rechtwinklig einschrauben.',
      'Mit dem Drehmoment des Herstellers anziehen.',
    ],
    'cutting-edge': [
      'Die plane Fläche um das Einschraubloch reinigen und die Spur einer früheren Kante ansehen.',
      'Von Hand rechtwinklig einschrauben.',
      'Mit dem Drehmoment des Herstellers anziehen.',
    ],
    'cone-24': [
      'Das Rohr rechtwinklig absägen, innen und außen leicht entgraten und reinigen.',
      'Erst die Mutter, dann den Schneidring auf das Rohr schieben, die Schneide zum Rohrende. Gewinde, Ring und Kegel ölen.',
      'Das Rohr am Anschlag im Kegel halten (einen neuen Ring zuerst in einem gehärteten Stutzen) und die Mutter von Hand aufschrauben, bis sie fest wird.',
      'Mutter und Rohr anzeichnen und ab diesem festen Punkt um den Drehwinkel des Herstellers anziehen; das Rohr bleibt am Anschlag.',
      'Lösen und den Bundaufwurf vor der Schneide prüfen: ringsum voll; der Ring darf sich drehen, aber nicht schieben lassen.',
      'Wieder bis zur Marke montieren und um den kleinen Drehwinkel des Herstellers darüber.',
    ],
    'cone-24-hose': [
      'Beide Kegel reinigen. Einen neuen O-Ring geölt in die Nut des Kegels legen.',
      'Den Kegel fluchtend einführen, ohne den Schlauch zu verdrehen, und die Mutter von Hand aufschrauben, bis sie fest wird.',
      'Gegenhalten und ab diesem festen Punkt um den Drehwinkel des Herstellers anziehen.',
    ],
    'cone-swivel': [
      'Beide Kegel auf Riefen und einen vollen Berührring prüfen; ein Kegel mit Nut bekommt einen neuen O-Ring.',
      'Fluchtend zusammenführen und die Mutter von Hand aufschrauben.',
      'Gegenhalten und mit dem Drehmoment des Herstellers anziehen.',
    ],
    npsm: [
      'In das NPT-Ende schauen: Es braucht innen einen 60°-Sitz. Beide Sitze auf Riefen prüfen.',
      'Fluchtend zusammenführen und die Mutter von Hand aufschrauben, ohne Dichtmittel.',
      'Gegenhalten und mit dem Drehmoment des Herstellers anziehen.',
    ],
    'taper-iso': [
      'Beide Gewinde reinigen. Dichtmittel auf das Außengewinde, der erste Gang bleibt frei.',
      'Von Hand einschrauben, dann mit dem Schlüssel, meist anderthalb bis drei Umdrehungen weiter (übliche Praxis; bei großen weniger).',
      'Nie zum Ausrichten zurückdrehen: Es würde lecken.',
    ],
    'taper-npt': [
      'Beide Gewinde reinigen. Dichtmittel auf das Außengewinde, der erste Gang bleibt frei.',
      'Von Hand einschrauben, dann mit dem Schlüssel, meist anderthalb bis drei Umdrehungen weiter (übliche Praxis; bei großen weniger).',
      'Nie zum Ausrichten zurückdrehen: Es würde lecken.',
    ],
    'taper-metric': [
      'Beide Gewinde reinigen. Dichtmittel auf das Außengewinde, der erste Gang bleibt frei.',
      'Von Hand einschrauben, dann mit dem Schlüssel nicht weiter, als der Hersteller angibt: Diese Gewinde sind kurz.',
      'Nie zum Ausrichten zurückdrehen: Es würde lecken.',
    ],
    'test-point': [
      'Erst den Druck ablassen, wo es geht: Das Ventil öffnet, während die Mutter aufgeschraubt wird.',
      'Beide Enden abwischen und die Mutter von Hand bis zum Anschlag aufschrauben, ohne Schlüssel.',
      'Danach die Kappe wieder aufsetzen: Sie hält Schmutz vom Ventil fern.',
    ],
    washer: [
      'Die plane Fläche um das Einschraubloch reinigen; keine Riefe darf sie queren.',
      'Eine neue Dichtscheibe auflegen, in Maß und Werkstoff nach Angabe des Herstellers, und von Hand rechtwinklig einschrauben.',
      'Mit dem Drehmoment des Herstellers anziehen.',
    ],
    dryseal: [
      'Beide Gewinde reinigen, Schmiermittel auf das Außengewinde; Dichtmittel nur, wo der Hersteller es verlangt.',
      'Von Hand einschrauben, dann mit dem Schlüssel, meist anderthalb bis drei Umdrehungen weiter (übliche Praxis; bei großen weniger).',
      'Nie zum Ausrichten zurückdrehen: Es würde lecken.',
    ],
    compression: [
      'Das Rohr rechtwinklig abschneiden und entgraten. Erst die Mutter, dann den Klemmring auf das Rohr schieben.',
      'Das Rohr bis zum Anschlag führen und die Mutter von Hand aufschrauben.',
      'Ab handfest um den Drehwinkel des Herstellers anziehen.',
    ],
    gauge: [
      'Eine neue Dichtscheibe an den Grund des Lochs legen.',
      'Das Manometer von Hand einschrauben.',
      'An seinen Schlüsselflächen mit dem Drehmoment des Herstellers anziehen.',
    ],
    flange: [
      'Beide Flächen reinigen, einen neuen O-Ring leicht geölt in die Nut legen.',
      'Beide Flanschhälften und alle vier Schrauben von Hand ansetzen, gleichmäßiger Spalt.',
      'Über Kreuz in Stufen mit dem Drehmoment des Herstellers anziehen, Schrauben der verlangten Güte.',
    ],
  },
  assemblyOf: {
    'cone-24': 'Rohr mit Schneidring',
    'cone-24-hose': 'Schlauchende mit O-Ring-Kegel',
  },
  fluids: {
    mineral: 'Mineralöl (HL, HM, HV)',
    emulsion: 'Emulsionen aus Öl und Wasser (HFAE, HFB)',
    solution: 'Wässrige Lösungen (HFAS)',
    glycol: 'Wasserglykol (HFC)',
    'phosphate-aryl': 'Phosphatester, Aryl (HFDR)',
    'phosphate-alkyl': 'Phosphatester, Alkyl (Luftfahrt)',
    'ester-fire': 'Polyolester, schwer entflammbar (HFDU)',
    vegetable: 'Pflanzlicher Ester (HETG)',
    ester: 'Synthetischer Ester (HEES)',
    polyglycol: 'Polyglykol (HEPG)',
    hydrocarbon: 'Polyalphaolefin (HEPR)',
    brake: 'Bremsflüssigkeit auf Glykolbasis (ISO 4925)',
  },
  temperature: 'Temperatur der Flüssigkeit',
  temperatureNote: 'Übliche Grenzen in Mineralöl; Mischungen unterscheiden sich.',
  epdm: 'EPDM kommt nie mit Mineralöl zusammen, auch nicht als Fett.',
  off: {
    title: 'Wovon stammt es?',
    lead: 'Unausgefüllt zählt es nicht. Es kann den Ausschlag geben, aber nie allein entscheiden.',
    region: 'Region',
    regions: {
      anywhere: 'beliebig',
      'north-america': 'Nordamerika',
      europe: 'Europa',
      'east-asia': 'Ostasien',
    },
    trade: 'Art der Maschine',
    trades: {
      any: 'beliebig',
      'mobile-hydraulics': 'Mobil- oder Industriehydraulik',
      automotive: 'Fahrzeug: Bremse, Kraftstoff, Kühlung',
    },
  },
  turns: { count: 'Gänge', over: 'auf einer Länge von' },
  cone: { wide: 'Weites Ende', narrow: 'Enges Ende', over: 'Länge dazwischen' },
  cones: {
    24: '24° Gesamtwinkel',
    60: '60° Gesamtwinkel',
    30: '30° zur Achse',
    37: '37° zur Achse',
    45: '45° zur Achse',
    none: 'kein Blatt liegt an',
  },
  marks: {
    none: 'kein Zeichen',
    'left-hand': 'LH, oder Kerben am Sechskant',
    light: 'L (leichte Reihe)',
    heavy: 'S (schwere Reihe)',
    nptf: 'NPTF',
  },
  crests: {
    rounded: 'Spitzen und Grund sind gerundet (55°)',
    flat: 'Spitzen sind flach abgeschnitten (60°)',
  },
  hands: {
    right: 'Es schraubt sich im Uhrzeigersinn auf',
    left: 'Es schraubt sich gegen den Uhrzeigersinn auf',
  },
  endPictures: {
    fixed: 'Nichts dreht: Gewinde und Körper sind eins',
    'swivel-nut': 'Eine Mutter, die sich auf Schlauchende oder Körper dreht',
    'tube-nut': 'Eine lose Mutter, die auf einem Rohr gleitet',
    stud: 'Außengewinde, das in einen Block geschraubt wird und an Bund oder Gewinde dichtet',
    port: 'Gewindeloch in einem Block oder Körper',
    'flange-head': 'Flacher Kopf ohne Gewinde, von Flanschhälften gehalten',
  },
  kinds: {
    'turns-over': {
      name: 'Gänge auf einer Länge',
      title: 'Gänge am Lineal zählen',
      how: 'Ein Lineal längs an das Gewinde legen. Von einer Spitze zehn Gänge weiterzählen (oder so viele da sind) und die Länge ablesen.',
    },
    'end-type': {
      name: 'Art des Endes',
      title: 'Was für ein Ende ist es?',
      how: 'Was dreht sich, und worin wird es verschraubt?',
    },
    'seat-gauge': {
      name: 'Sitzlehre',
      title: 'Sitzlehre (Blätter) anlegen',
      how: 'Die Blätter an den Kegel halten, in Achsrichtung, gegen das Licht. 30°, 37° und 45° sehen für das Auge gleich aus.',
    },
    'cone-size': {
      name: 'Kegel mit dem Messschieber',
      title: 'Den Kegel messen',
      how: 'Durchmesser am weiten und am engen Ende, und die Länge dazwischen längs der Achse (Tiefenmaß oder Lineal). Daraus folgt der Winkel.',
    },
    'nose-od': {
      name: 'Durchmesser der Kegelspitze',
      title: 'Die Spitze des Kegels messen',
      how: 'Über das enge Ende des Kegels, der in der Mutter steht, ganz vorn. Messschieber oder Lineal. Am Schlauchende ersetzt es das Rohr.',
    },
    'crest-form': {
      name: 'Form der Spitzen',
      title: 'Gerundete oder flache Spitzen?',
      how: 'Mit einer Lupe längs der Spitzen schauen, wo sie nicht verschlissen sind.',
    },
    'flange-thickness': {
      name: 'Dicke des Kopfs',
      title: 'Den Flanschkopf messen',
      how: 'Wie dick ist der Rand, den die Flanschhälften halten? Messschieber oder Lineal.',
    },
    'bolt-spacing': {
      name: 'Schraubenabstand',
      title: 'Zwischen den Schrauben messen',
      how: 'Von Mitte zu Mitte zweier Schrauben, in der längeren Richtung. Von Rand zu gleichem Rand messen.',
    },
    marking: {
      name: 'Zeichen',
      title: 'Nach einem Zeichen suchen',
      how: 'Eingeschlagene Buchstaben, oder kleine Kerben über den Ecken des Sechskants.',
    },
    hand: {
      name: 'Gangrichtung',
      title: 'Wie herum schraubt es sich auf?',
      how: 'Das Gewinde aufrecht halten: Bei Rechtsgewinde steigen die Gänge nach rechts.',
    },
    hex: {
      name: 'Schlüsselweite',
      title: 'Über die Schlüsselflächen messen',
      how: 'Ein schwacher Hinweis: Ein Gewinde gibt es an mehreren Sechskanten. Messschieber oder Lineal über zwei Flächen.',
    },
  },
  femaleHow: {
    'pitch-gauge':
      'Innengewinde: Blätter in Achsrichtung in das Loch halten. Wo sie nicht hineinreichen, ein bekanntes Außengewinde einschrauben.',
    'turns-over':
      'Innengewinde: Knetmasse oder weiches Papier hineindrücken, herausnehmen und die Rippen zählen.',
    taper:
      'Innengewinde: ein zylindrisches Außengewinde (Dorn) einschrauben. Im kegeligen klemmt es nach wenigen Gängen, im zylindrischen läuft es bis ans Ende.',
    flank:
      'Innengewinde: die Lehre in das Loch halten, oder einen Abdruck nehmen und diesen prüfen.',
    'crest-form': 'Innengewinde: die Spitzen hinter der Öffnung ansehen, mit Lupe und Licht.',
    'tube-od': 'Außendurchmesser des Rohrs, auf dem die Mutter sitzt.',
    'seat-gauge': 'Innengewinde: das Blatt in den Sitz halten, oder an den Kegel in der Mutter.',
    seat: 'Welche Zeichnung gleicht dem Innern dieses Endes? An der dicken Linie dichtet es.',
  },
  familyNotes: notesDe,
};
