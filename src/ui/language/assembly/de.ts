import type { AssemblyWords } from './en';

export const assemblyDe: AssemblyWords = {
  ends: { male: 'Außengewinde', female: 'Innengewinde' },
  endTypes: {
    fixed: 'festes Ende',
    'swivel-nut': 'Überwurfmutter',
    stud: 'Einschraubzapfen',
    port: 'Einschraubloch',
    'tube-nut': 'Überwurfschraube',
    'flange-head': 'Flanschkopf',
  },
  endRow: 'Ende',
  form: 'Form',
  formOpen: 'offen: Dichtring oder Dichtkante ansehen',
  leftHand:
    'Linksgewinde (LH). Es zieht gegen den Uhrzeigersinn an; kein Teil mit Rechtsgewinde passt. Als LH bestellen, nie ein Rechtsgewinde mit Gewalt aufschrauben.',
  nptf: 'NPT und NPTF lassen sich durch Messen nicht unterscheiden. Vor der Wahl Kennzeichnung oder Zeichnung des Teils ansehen.',
  tapers:
    'Ein kegeliges Außengewinde gehört in Rp (zylindrisch) oder Rc (kegelig) nach ISO 7-1, nie in ein G-Einschraubloch.',
  lookAlikes: 'Sieht ähnlich aus, nie mit Gewalt verbinden',
  alsoUses: 'Auch mit diesem Gewinde, nicht in diesen Tabellen',
  inMating: 'im Gegenstück mit Außengewinde',
  byForm: 'je nach Form, siehe Angaben des Herstellers',
  grooves: 'Nuten gibt es glatt oder haltend (am Mund verengt): Der Ring hat dieselbe Größe.',
  sealings: {
    'face-seal': 'O-Ring in der Planfläche des Außengewindes (flachdichtend, ORFS)',
    flare: 'Metall auf Metall, Kegel in Bördel',
    inverted: 'Metall auf Metall, Rohrbördel auf dem Kegel am Grund des Einschraublochs',
    'stud-o-ring': 'O-Ring unter dem Sechskant, in der Fase des Einschraublochs',
    'stud-retained-ring': 'O-Ring im Stützring, auf der Planfläche um das Einschraubloch',
    'face-ring': 'Ring oder Kante auf der Planfläche um das Einschraubloch',
    'cone-24': 'Schneidring oder O-Ring eines Kegels im 24°-Kegel',
    'cone-24-hose': 'Kegel mit O-Ring oder Schneidring auf dem Rohr, im 24°-Kegel',
    'cone-swivel': 'Metall auf Metall, Kegel in Kegel',
    taper: 'Gewinde in Gewinde, mit Dichtmittel',
    flange: 'O-Ring in der Planfläche des Flanschkopfs',
  },
  mates: {
    'face-seal': {
      male: 'Überwurfmutter mit planer Hülse gleicher Größe',
      female: 'Außengewinde gleicher Größe mit O-Ring in der Planfläche',
    },
    flare: {
      male: 'Überwurfmutter gleichen Winkels und gleicher Größe, auf gebördeltem Rohr oder Schlauch',
      female: 'Außengewinde mit Außenkegel gleichen Winkels und gleicher Größe',
    },
    inverted: {
      male: 'Einschraubloch für Inverted Flare gleicher Größe, Rohr passend gebördelt',
      female: 'Überwurfschraube gleicher Größe auf gebördeltem Rohr',
    },
    'stud-o-ring': {
      male: 'Einschraubloch mit gleichem Gewinde und Fase für den Ring',
      female: 'Einschraubzapfen derselben Norm und Größe, mit O-Ring',
    },
    'stud-retained-ring': {
      male: 'Einschraubloch mit gleichem Gewinde und breiter Planfläche',
      female: 'Einschraubzapfen derselben Norm und Größe, mit Ring oder Kante',
    },
    'face-ring': {
      male: 'Einschraubloch mit gleichem Gewinde und planer bearbeiteter Fläche',
      female: 'Einschraubzapfen derselben Norm und Größe, mit Ring oder Kante',
    },
    'cone-24': {
      male: 'Mutter derselben Reihe (L oder S) mit Schneidring und Rohr oder Schlauchende mit 24°-Kegel',
      female: 'Außengewinde derselben Reihe (L oder S) und Größe mit 24°-Innenkegel',
    },
    'cone-24-hose': {
      male: 'Mutter derselben Reihe (L oder S) mit Schneidring und Rohr oder Schlauchende mit 24°-Kegel',
      female: 'Außengewinde derselben Reihe (L oder S) und Größe mit 24°-Innenkegel',
    },
    'cone-swivel': {
      male: 'Überwurfmutter mit gleichem Gewinde und Sitzwinkel',
      female: 'Außengewinde mit gleichem Gewinde und Sitzwinkel',
    },
    taper: {
      male: 'Innengewinde nach derselben Norm',
      female: 'kegeliges Außengewinde nach derselben Norm',
    },
    flange: {
      male: 'Anschraubfläche mit vier Schrauben und zwei Flanschhälften gleichen Codes und gleicher Größe',
      female: 'Flanschkopf gleichen Codes und gleicher Größe, mit Flanschhälften',
    },
  },
  steps: {
    'face-seal': [
      'Beide Flächen reinigen. Neuen O-Ring leicht geölt und unverdreht in die Nut legen.',
      'Die plane Hülse fluchtend an die Fläche führen, die Mutter von Hand aufschrauben.',
      'Mit einem zweiten Schlüssel gegenhalten und die Mutter mit dem Drehmoment des Herstellers anziehen.',
    ],
    flare: [
      'Bördel und Kegel auf Riefen, Risse und einen vollen Berührring prüfen.',
      'Gewinde und Kegel ölen, die Mutter von Hand aufschrauben, bis die Sitze anliegen.',
      'Mit einem zweiten Schlüssel gegenhalten und die Mutter nach Schlüsselflächen ab handfest oder mit dem Drehmoment des Herstellers anziehen.',
      'Ist es undicht: nicht weiter anziehen, um die Leckage zu beseitigen, sondern Druck ablassen und die Sitze ansehen.',
    ],
    inverted: [
      'Bördel des Rohrs und Kegel am Grund prüfen; ein markierter Bördel wird abgeschnitten und neu gemacht.',
      'Das Rohr gerade auf den Kegel schieben, die Überwurfschraube von Hand eindrehen.',
      'Gegenhalten und nach Drehwinkel oder Drehmoment des Herstellers anziehen; das Rohr darf sich nicht verdrehen.',
    ],
    'stud-o-ring': [
      'Die Fase des Einschraublochs ansehen. Neuen O-Ring ölen und mit einer Hülse über das Gewinde führen.',
      'Fester Zapfen: von Hand einschrauben, bis der Sechskant anliegt, dann mit dem Drehmoment des Herstellers anziehen.',
      'Einstellbarer Zapfen: Kontermutter ganz zurückdrehen, Scheibe nach oben; von Hand einschrauben, bis die Scheibe anliegt; zum Ausrichten höchstens eine Umdrehung zurück.',
      'So mit einem zweiten Schlüssel halten und die Kontermutter mit dem Drehmoment des Herstellers anziehen.',
    ],
    'stud-retained-ring': [
      'Die Planfläche um das Einschraubloch reinigen; keine Riefe darf sie queren. Neuen O-Ring im Stützring auflegen, leicht geölt.',
      'Fester Zapfen (Form G): von Hand einschrauben, bis der Ring anliegt, dann mit dem Drehmoment des Herstellers anziehen.',
      'Einstellbarer Zapfen (Form H): Kontermutter zurückdrehen, einschrauben, bis der Ring anliegt, zum Ausrichten höchstens eine Umdrehung zurück, gegenhalten und die Kontermutter mit dem Drehmoment des Herstellers anziehen.',
    ],
    'face-ring': [
      'Die Planfläche um das Einschraubloch reinigen; keine Riefe darf sie queren.',
      'Einen neuen Ring auflegen (wenn die Form einen hat), ölen und von Hand rechtwinklig einschrauben.',
      'Mit dem Drehmoment des Herstellers anziehen.',
    ],
    'cone-24': [
      'Das Rohr rechtwinklig absägen und entgraten. Erst die Mutter, dann den Schneidring aufschieben, die Schneide zum Rohrende.',
      'Gewinde, Kegel und Ring ölen. Einen neuen Ring am besten in einem gehärteten Stutzen vormontieren.',
      'Das Rohr fest gegen den Anschlag drücken, dort halten und die Mutter aufschrauben, bis sie fest wird. Mutter und Rohr markieren.',
      'Mit einem zweiten Schlüssel gegenhalten und die Mutter vom festen Punkt an um den Drehwinkel des Herstellers drehen.',
      'Lösen und ansehen: Ein voller Bundaufwurf muss vor der Schneide stehen. Der Ring darf sich drehen, aber nicht verschieben.',
      'Wieder bis zur Marke zusammenbauen, dann um den kleinen Winkel des Herstellers weiter.',
    ],
    'cone-24-hose': [
      'Beide Kegel prüfen. Neuen O-Ring leicht geölt in die Nut des Kegels legen. (Ein Rohr mit Schneidring wird zuerst vormontiert.)',
      'Die Enden fluchtend zusammenführen und die Mutter von Hand aufschrauben, bis sie fest wird.',
      'Mit einem zweiten Schlüssel gegenhalten und die Mutter vom festen Punkt an um den Drehwinkel des Herstellers drehen; der Schlauch darf sich nicht verdrehen.',
    ],
    'cone-swivel': [
      'Beide Kegel auf Riefen und einen vollen Berührring prüfen; trägt der Kegel einen O-Ring, einen neuen einlegen.',
      'Fluchtend zusammenführen und die Mutter von Hand aufschrauben.',
      'Mit einem zweiten Schlüssel gegenhalten und mit dem Drehmoment des Herstellers anziehen.',
    ],
    taper: [
      'Beide Gewinde reinigen. Dichtmittel auf das Außengewinde, der erste Gang bleibt frei; trocken dichtende Gewinde bekommen Schmiermittel, wo kein Dichtmittel verlangt ist.',
      'Von Hand einschrauben, dann mit dem Schlüssel, meist anderthalb bis drei Umdrehungen über handfest (übliche Praxis).',
      'Nie zum Ausrichten zurückdrehen: Es würde lecken. Es gehört weder in ein G-Einschraubloch noch in ein anderes zylindrisches, das kein Rp ist.',
    ],
    flange: [
      'Beide Flächen reinigen, einen neuen O-Ring leicht geölt in die Nut legen.',
      'Beide Flanschhälften und alle vier Schrauben von Hand ansetzen, gleichmäßiger Spalt.',
      'Über Kreuz in Stufen mit dem Drehmoment des Herstellers anziehen, Schrauben der verlangten Güte.',
    ],
  },
};
