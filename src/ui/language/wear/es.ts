import type { WearWords } from './en';

export const wearEs: WearWords = {
  title: '¿Esta pieza sirve todavía?',
  lead: 'Para un extremo macho usado: qué habla en su contra y qué galga lo diría. Nada de aquí autoriza una pieza para presión.',
  start: 'Revisar una rosca usada',
  toSheet: 'A la ficha',
  stop: 'Dejar esta pregunta',
  stopped: 'Las respuestas sobre el desgaste se han borrado.',
  femaleEnd:
    'Los límites de aquí son de roscas macho. Una hembra se juzga por su asiento y con los tapones PASA y NO PASA.',
  thread: 'Rosca que debería tener',
  threadHint: 'como 3/4-16 UNF',
  threadEmpty: 'Si queda vacío: la que encuentre la foto.',
  threadUnknown: 'No hay tal rosca en las tablas. Escríbala como 3/4-16 UNF, M22x1.5 o G1/2.',
  threadMissing: 'Diga primero qué rosca debería tener.',
  found: (name) => `La encontrada: ${name}`,
  candidate: (name, share) => `${name} · ${share}`,
  notFound: 'La rosca no está decidida. Elija la que esta pieza debería tener.',
  class: 'Clase',
  beforehand: 'Antes de fiarse',
  widthOf: (name, width, need) =>
    `La clase ${name} tiene ${width} mm de ancho sobre las crestas. Solo una medida más segura que ± ${need} mm puede hallar una cresta dentro. Un pie de rey en tres sitios lo es (± 0,04 mm); una foto, a menudo no.`,
  photoDecidesNothing: (u, width, by) =>
    `Esta foto vale ± ${u} mm y la clase tiene ${width} mm de ancho: ninguna pieza podría hallarse dentro. Solo muestra crestas que quedan más de ${by} mm fuera.`,
  photoCanDecide: (u, width) =>
    `Esta foto vale ± ${u} mm y la clase tiene ${width} mm de ancho: puede decidir, salvo cerca de un límite.`,
  wouldDecide:
    'Sobre las crestas decide un pie de rey en tres sitios; sobre la rosca, los anillos PASA y NO PASA; sobre el asiento, la vista o una galga de asiento.',
  taperNote:
    'Una rosca cónica se juzga por cuánto entra en su anillo patrón, no por sus crestas. Ninguna foto lo decide.',
  noClass:
    'Los límites de esta rosca no están en estas tablas. Deciden sus anillos PASA y NO PASA.',
  photoTitle: 'Con una foto',
  photoText:
    'Muestra la altura de cada cresta. Mejor grande, nítida y desde arriba, sobre la tarjeta.',
  readingsTitle: 'Solo con medidas',
  readingsText:
    'Mirar, girar a mano, pasar las galgas y poner el pie de rey sobre las crestas en tres sitios.',
  goOn: 'Seguir con medidas',
  finding: 'Conclusión',
  levels: {
    replace: 'Cambiarla',
    gauge: 'Comprobarla con galga antes de usarla',
    none: 'Nada hallado hasta ahora',
    nothing: 'Aún no se ha mirado nada',
  },
  levelText: {
    replace: 'Decide la más grave de las razones de abajo.',
    gauge: 'Lo visto no condena la pieza ni la da por buena.',
    none: 'Nada de lo mirado habla en su contra. Eso no aprueba la rosca ni la autoriza para presión.',
    nothing: 'Responda de arriba abajo: en ese orden mira el oficio.',
  },
  shortLevels: { replace: 'cambiar', gauge: 'comprobar con galga', none: 'nada en contra' },
  notLooked: 'Sin mirar',
  reasons: {
    'seal-scratched': 'Cara de sellado rayada: no volverá a sellar.',
    'turns-torn': 'Primeros hilos arrancados o doblados: cortarían la rosca de la otra pieza.',
    'turns-burred': 'Primeros hilos con rebaba: quitarla y luego pasar la galga.',
    'first-turns-short':
      'En la foto, las primeras crestas están más bajas que las demás: busque hilos arrancados o doblados.',
    rocks: 'Cabecea en su pareja: flancos gastados. Deciden los anillos.',
    stiff:
      'Gira con dificultad: rebaba, suciedad, pieza doblada u otra rosca. Limpiar y luego pasar la galga.',
    'not-go-beyond':
      'El anillo NO PASA entra más de dos vueltas: el diámetro de flancos es demasiado pequeño.',
    'go-stops': 'El anillo PASA se detiene: exceso, pieza doblada, dañada u otra rosca.',
    'plane-deep': 'Entra claramente demasiado en su anillo patrón: gastada.',
    'plane-short': 'No entra en su anillo patrón tanto como debería: exceso, daño u otra rosca.',
    'plane-open': 'En el límite de su anillo patrón: límpielo y léalo otra vez.',
    'plane-within': 'El anillo patrón se detiene dentro de sus límites.',
    'another-thread': 'La foto muestra otro paso que el de esta rosca.',
    'crests-short':
      'En la foto, algunas crestas parecen más bajas que las demás: busque allí golpes o arranques; un brillo puede parecer lo mismo.',
    uneven: 'Desigual: el diámetro varía alrededor de la pieza o a lo largo.',
    'crest-below':
      'Crestas por debajo de su clase. Lo más leve: sobre resistencia y ajuste deciden los anillos.',
    'crest-below-rings-pass':
      'Crestas por debajo de su clase, pero ambos anillos dan bien: apoya menos cresta.',
    'crest-above': 'Crestas por encima de su clase: rebaba, recubrimiento u otra rosca.',
    'crest-open': 'Crestas: sin decidir.',
    'crest-within': 'Crestas dentro de su clase. Eso no aprueba la rosca.',
  },
  questions: {
    seal: {
      name: 'Cara de sellado',
      how: 'Cono, ranura o cara plana, con luz rasante. Pase la uña de través: una raya que cruza el sello y la engancha es el final.',
      answers: { unmarked: 'sin marcas', scratched: 'rayada' },
    },
    firstTurns: {
      name: 'Primeros dos o tres hilos',
      how: '¿Enteros hasta la cresta, sin canto doblado, rebaba ni plano?',
      answers: { whole: 'enteros', burred: 'con rebaba', torn: 'arrancados o doblados' },
    },
    byHand: {
      name: 'A mano',
      how: 'Limpia, enrosque a mano una buena pareja en toda la longitud. Luego intente hacerla cabecear.',
      answers: { free: 'gira libre, sin cabeceo', stiff: 'dura', rocks: 'cabecea' },
    },
    goRing: {
      name: 'Anillo PASA',
      how: '¿Pasa a mano por toda la rosca (ISO 1502, ASME B1.2)?',
      answers: { 'runs-on': 'pasa', stops: 'se detiene' },
    },
    notGoRing: {
      name: 'Anillo NO PASA',
      how: 'A mano, sin fuerza: dos vueltas como mucho (ISO 1502).',
      answers: { holds: 'aguanta en dos vueltas', 'beyond-two': 'entra más de dos vueltas' },
    },
  },
  notLookedAt: 'sin mirar',
  caliper: 'Calibre sobre las crestas',
  caliperHow: 'Bocas a escuadra con el eje, en tres sitios. En cada uno, la mayor de tres.',
  places: { end: 'Extremo libre', middle: 'Centro', last: 'Último hilo completo' },
  ring: 'Anillo patrón del cono',
  ringHow:
    'Enrosque el anillo a mano. ¿Dónde queda el extremo menor, en vueltas desde la cara del anillo?',
  ringPast: 'vueltas más allá de la cara',
  ringShort: 'vueltas sin llegar',
  ringTurns: 'Vueltas',
  ringWrong: 'Escriba un número de vueltas entre 0 y 100, como 1,5.',
  clear: 'Borrar',
  crests: 'Crestas',
  verdicts: {
    within: 'Dentro de la clase. Vale solo para la cresta; no aprueba la rosca.',
    below: (by) => `${by} mm por debajo de su clase.`,
    above: (by) => `${by} mm por encima de su clase: rebaba, recubrimiento u otra rosca.`,
  },
  undecided: {
    'near-limit': 'No se puede decidir: demasiado cerca de un límite para esta incertidumbre.',
    'too-uncertain': 'No se puede decidir: la medida es menos segura que ancha es la clase.',
    tapered: 'Una rosca cónica se juzga por su anillo patrón, no por sus crestas.',
    'no-class': 'Los límites de esta rosca no están en estas tablas.',
    'another-pitch': 'Sin juzgar: la foto muestra otro paso que el de esta rosca.',
    unresolved: 'La foto no resuelve el diámetro.',
    'places-missing': 'Lo medido está dentro; faltan por medir los otros sitios.',
  },
  by: { photo: 'foto', caliper: 'pie de rey' },
  rule: 'Decidido al 95 % con una banda de guarda de 1,65 u (ISO 14253-1). ± es el intervalo del 95 %.',
  scale: (name, from, to) => `Clase ${name}: de ${from} a ${to} mm sobre las crestas`,
  pitchDiameterOf: (from, to) =>
    `Diámetro de flancos de ${from} a ${to} mm: lo juzgan los anillos, no la foto.`,
  flank: (seen, nominal) => `Ángulo de flancos ${seen}; según la norma ${nominal}.`,
  flankOpen: 'Forma de los flancos: sin resolver.',
  chart: 'Altura de cada cresta',
  chartText:
    'Radio de cada cresta con su ±; en grueso, lo que no comparte con las demás. Detrás, la clase.',
  chartFrom:
    'Contado desde el extremo libre del tramo medido. Lo que la foto no muestra no se juzga.',
  chartName: (count, short) =>
    `Alturas de ${count} crestas; ${short} están más bajas que las demás`,
  chartNone:
    'Sin crestas sueltas en esta ficha: junto a una regla, o en una imagen llegada por mensajería, no se miden.',
  alongAxis: 'mm desde el extremo libre',
  sides: { left: 'lado izquierdo', right: 'lado derecho' },
  band: 'clase',
  turn: 'Hilo',
  side: 'Lado',
  at: 'A',
  height: 'Altura',
  short: 'Más baja que las demás en',
  list: 'Como lista',
  marks: 'Marcado en la foto',
  markShort: 'más baja que las demás: arrancada, doblada o golpeada',
  markBelow: 'por debajo de la clase: aplanada',
  noMarks: 'Ninguna cresta es más baja que las demás ni queda por debajo de su clase.',
  bears: 'Lo que aún apoya',
  overlap: (left, limit, share) =>
    `Por lado, ${left} mm de cresta apoyan aún sobre el agujero más ancho: el ${share} de los ${limit} mm en el límite de clase.`,
  overlapNone: 'Nada de la cresta llega más allá del agujero más ancho.',
  overlapNote: 'La resistencia depende del diámetro de flancos, que juzgan los anillos.',
  overlapName: (name) =>
    `Semicorte de ${name} en su pareja, a escala: en grueso, el flanco que aún apoya; a trazos, la cresta en el límite de clase`,
  overlapKeys: {
    internal: 'pareja, agujero más ancho',
    external: 'esta pieza',
    limit: 'cresta en el límite de clase',
  },
  round: 'Alrededor de la pieza',
  roundOne: 'Una foto muestra un diámetro. Gire la pieza un cuarto de vuelta y haga otra.',
  roundEven: (apart) => `Las fotos difieren en ${apart} mm: no más que el azar.`,
  roundUneven: (apart) =>
    `Las fotos difieren en ${apart} mm: desgaste desigual, o no es la misma pieza. Cuenta el diámetro menor.`,
  addQuarter: 'Añadir una foto, girada un cuarto',
  takeQuarter: 'Hacer una, girada un cuarto',
  confirm:
    'Quitar la presión antes de aflojar nada. Comprobar con galga antes de dar presión. Juntas tóricas siempre nuevas.',
  onSheet: (level) => `¿Sirve todavía? ${level}`,
};
