/** The family notes of the tables, by their keys. */
export const notesDe: Readonly<Record<string, string>> = {
  'iso-8434-3.know':
    'Das Außengewinde-Ende ist plan und trägt einen O-Ring in einer Nut der Stirnfläche.',
  'iso-8434-3.ring':
    'Der Ring hat Härte 90: Ein weicherer gleicher Größe wird aus der Nut gedrückt.',
  'iso-8434-3.mate':
    'Gegenstück ist eine plane Hülse unter einer Überwurfmutter gleicher Dash-Größe, an Rohr oder Schlauch.',
  'iso-8434-3.mistaken':
    'Die Größen -4 und -12 haben das Gewinde des 37°-Bördels und des O-Ring-Zapfens: die Stirnfläche ansehen.',
  'iso-8434-2.know':
    'Das Außengewinde-Ende schließt mit einem Kegel von 37° zur Achse; das Rohr ist im selben Winkel gebördelt.',
  'iso-8434-2.mistaken':
    'Die Größen -2 bis -5, -8 und -10 haben das Gewinde des 45°-Bördels: eine Sitzlehre an den Kegel halten.',
  'iso-8434-2.mix':
    '37°- und 45°-Teile lassen sich verschrauben und berühren sich nur auf einer Linie: Sie lecken und reißen.',
  'sae-j512.know':
    'Das Außengewinde-Ende schließt mit einem Kegel von 45° zur Achse. Meist Messing, für niedrigen Druck.',
  'sae-j512.mix': 'Es ersetzt keinen 37°-Bördel, obwohl mehrere Größen das Gewinde teilen.',
  'sae-j512-inverted.know':
    'Das Außengewinde ist eine Mutter, die das gebördelte Rohr auf einen Kegel drückt, der am Grund des Lochs aufragt.',
  'sae-j512-inverted.mate':
    'Bördel, Mutter und Loch gehören zusammen: das Rohrende ersetzen, wenn sein Bördel gezeichnet ist.',
  'sae-j512-compression.know':
    'Eine Mutter presst einen Klemmring aus Messing auf ein glattes Rohr; der Körper öffnet sich in einer Fase für ihn.',
  'sae-j512-compression.mistaken': 'Für niedrigen Druck: kein Ersatz für Schneidring oder Bördel.',
  'nf-e-48-050.know':
    'Der 24°-Kegel der ISO 8434-1, für Rohre der alten Gasrohrmaße und durchweg mit 1,5 mm Steigung.',
  'nf-e-48-050.mistaken':
    'M20x1,5 und M24x1,5 gehören auch zur schweren Reihe der ISO 8434-1: die Bohrung für das Rohr messen.',
  'iso-4038.know':
    'Eine Rohrmutter auf gebördelter Bremsleitung; der Sitz steht am Grund des Lochs.',
  'iso-4038.mistaken':
    'Zwei Bördel teilen die Mutter, der Doppelbördel und der Pilzbördel: Das Rohrende muss zum Loch passen.',
  'en-837-1.know':
    'Zylindrisches Gewinde mit kurzem Zapfen an der Spitze; eine Scheibe dichtet am Grund des Lochs.',
  'en-837-1.npt': 'Manometer gibt es auch mit NPT-Zapfen, die im Gewinde dichten.',
  'din-3852-1.know':
    'Metrisches Gewinde mit 60°, Kegel 1:16; meist an Schmier- und Niederdruckleitungen.',
  'din-3852-1.mate':
    'Es dichtet in einem dafür gemachten zylindrischen Loch (Form Z), mit Dichtmittel; ein Einschraubloch mit planer Fläche ist das nicht.',
  'iso-15171.know':
    'Ein Außengewinde unter einer Kappe, innen ein Ventil, das der Messschlauch beim Aufschrauben öffnet.',
  'iso-15171.mistaken':
    'Andere Messanschlüsse sehen ähnlich aus und haben andere Gewinde oder Steigungen: nie einen Messschlauch mit Gewalt aufschrauben.',
  'iso-11926.know':
    'Zylindrisches UN-Gewinde mit O-Ring zwischen Gewinde und Sechskant; das Einschraubloch hat eine Fase für den Ring.',
  'iso-11926.adjustable':
    'Einstellbare Enden tragen Scheibe und Kontermutter über dem Ring; sie dichten erst, wenn die Mutter sitzt.',
  'iso-11926.mistaken':
    'Die Gewinde sind die des 37°-Bördels: Ein Zapfen hat keinen Kegel, ein Bördel keinen Ring am Sechskant.',
  'iso-6149.know':
    'Wie der O-Ring-Zapfen in Zoll, mit metrischem Gewinde; ein erhabener Ring um die Öffnung zeichnet das Einschraubloch aus.',
  'iso-6149.mistaken':
    'Ein Einschraubloch nach ISO 9974 hat das gleiche Gewinde, aber keine Fase für den Ring: Die beiden dichten nicht.',
  'iso-9974.know':
    'Der Bund dichtet auf einer bearbeiteten Fläche um das Einschraubloch: mit weichem Ring im Bund (Form E), Dichtkante (Form B) oder loser Dichtscheibe (Form A).',
  'iso-9974.ring':
    'Eine Kante der Form B gräbt jedes Mal eine neue Linie: die Fläche vor Wiedergebrauch prüfen.',
  'iso-1179.know':
    'Zylindrisches Rohrgewinde; der Bund dichtet mit weichem Ring (Form E), O-Ring mit Stützring (G, H), Kante (B) oder loser Dichtscheibe (A).',
  'iso-1179.mistaken':
    'Das kegelige R hat die gleiche Steigung und fast den gleichen Durchmesser: Der Kegel unterscheidet sie.',
  'iso-8434-1.know':
    'Das Außengewinde-Ende öffnet sich in einem 24°-Kegel, dahinter eine Bohrung vom Maß des Rohrs.',
  'iso-8434-1.series':
    'Leichte und schwere Reihe teilen Gewinde bei verschiedenen Rohren: das Rohr messen oder seine Bohrung im Ende.',
  'iso-8434-1.mate':
    'Es nimmt Schneidring, Schweißkegel mit O-Ring oder Schlauchende mit 24°-Kegel unter einer Mutter gleicher Reihe auf.',
  'iso-8434-6.know':
    'Das Außengewinde-Ende öffnet sich in einem 60°-Kegel; der Nippel unter der Mutter hat den passenden Außenkegel.',
  'iso-8434-6.mistaken':
    'Ein 30°-Sitz nach JIS B 8363 ragt am Außengewinde heraus; der 60°-Kegel öffnet sich nach innen.',
  'din-7631.know':
    'Das Außengewinde-Ende öffnet sich in einem 60°-Kegel, metrisches Gewinde mit 1,5 mm Steigung.',
  'din-7631.mistaken':
    'Viele Größen haben das Gewinde des 24°-Kegels: auf den Winkel und die Rohrbohrung dahinter achten.',
  'jis-b-8363.know': 'Der Sitz steht 30° zur Achse, am Außengewinde nach außen.',
  'jis-b-8363.hollow':
    'Manche Außengewinde derselben Norm haben statt dessen einen hohlen Sitz: vor dem Verbinden ansehen.',
  'jis-b-8363.mistaken':
    'Der Winkel liegt nahe am 37°-Bördel; das Gewinde ist ein Rohr- oder metrisches.',
  'iso-7-1.know':
    'Außengewinde mit 55°, Kegel 1:16; es dichtet in einem kegeligen (Rc) oder zylindrischen (Rp) Innengewinde, mit Dichtmittel.',
  'iso-7-1.never-g':
    'Es gehört nie in ein Einschraubloch G, das dasselbe Gewinde hat, aber keine Grenzmaße zum Dichten.',
  'iso-7-1.mistaken':
    'Bei 1/2 und 3/4 hat es die Steigung von NPT bei fast gleichem Durchmesser: Der Flankenwinkel ist 55°, nicht 60°.',
  'asme-b1-20-1.know': 'Gewinde mit 60°, Kegel 1:16; es dichtet im Gewinde, mit Dichtmittel.',
  'asme-b1-20-1.swivel':
    'Eine drehbare NPSM-Mutter dichtet auf der 60°-Fase im NPT-Ende, nicht auf dessen Gewinde.',
  'asme-b1-20-1.dryseal':
    'NPTF sieht gleich aus und unterscheidet sich nur darin, wie weit Spitzen und Grund geschnitten sind: auf die Zeichen am Teil achten.',
  'sae-j476.know':
    'Spitzen und Grund treffen sich vor den Flanken. Für Auge und Messschieber ist es NPT.',
  'iso-6162.know':
    'Ein flacher runder Kopf mit O-Ring in der Stirnfläche, von zwei Flanschhälften und vier Schrauben gehalten.',
  'iso-6162.codes':
    'Köpfe nach Code 62 sind dicker und breiter als die nach Code 61 für den gleichen Schlauch, und ihre Schrauben stehen anders.',
};
