import { notesEs } from '../notes/es';
import type { Trade } from './trade';

export const tradeEs: Trade = {
  gender: { male: 'macho', female: 'hembra' },
  endTypes: {
    fixed: 'fijo',
    'swivel-nut': 'tuerca loca',
    'tube-nut': 'tuerca de tubo',
    stud: 'extremo de inserción',
    port: 'orificio',
    'flange-head': 'boca de brida',
  },
  ordered: {
    fixed: 'Extremo fijo',
    'swivel-nut': 'Tuerca loca',
    'tube-nut': 'Tuerca de tubo',
    stud: 'Extremo macho de inserción',
    port: 'Orificio',
    'flange-head': 'Boca de brida',
  },
  or: 'o',
  form: (form) => `forma ${form}`,
  size: (size) => `tamaño ${size}`,
  orderLine: 'Para pedir',
  toAdd: {
    stud: 'Falta decir: el material, y si es fijo u orientable.',
    other: 'Falta decir: el material.',
  },
  oRingOrdered: (designation, hardness) =>
    `junta tórica ${designation}${hardness && `, NBR ${hardness}`}`,
  inTheMate: (ring) => `en el extremo macho que le corresponde: ${ring}`,
  inTheStud: (ring) => `en el extremo que se enrosca en él: ${ring}`,
  captive: 'Las ranuras son simples o de retención; ambas llevan esta junta.',
  alsoCalled: 'También llamado',
  leftHand: 'Rosca a izquierdas (LH)',
  leftHandWarning:
    'Se enrosca en sentido antihorario. Ninguna pieza corriente de este tamaño sirve: pídala como LH y nunca fuerce una a derechas.',
  nearest: (thread, off, large, male) =>
    `Nada encaja. Lo más cercano es ${thread}; esto es ${off} demasiado ${large ? 'grande' : 'pequeño'} para un extremo ${male ? 'macho' : 'hembra'}.`,
  missing: (reading, tools) =>
    `Nada de lo que hay a mano lo decide. Lo que lo decidiría: ${reading}${tools && ` (${tools})`}.`,
  cannotTell: 'No lo sé',
  cannotTellOf: (what) => `No se puede decir: ${what}`,
  dryseal: 'Por la rosca no se distingue NPTF de NPT: busque la marca NPTF en la pieza.',
  notes: 'Reconocerla y no confundirla',
  also: 'También con esta rosca',
  alsoUsed: {
    banjo: 'También los tornillos huecos: taladro transversal y arandela a ambos lados del ojo.',
    'universal-nose':
      'Los terminales de cabeza universal van en el cono de 24° y en el de 60°: mire la cabeza misma.',
    'jis-cone-60':
      'JIS B 8363 tiene también machos con asiento hueco de 60°; que una tuerca BS 5200 selle en ellos depende de su largo de rosca.',
  },
  pressure: {
    title: 'Presión de trabajo',
    none: 'No se da aquí: depende de norma, edición, tamaño y modelo. Vale la del fabricante, y la más baja de todas las piezas manda.',
  },
  never: {
    title: 'No unir nunca con',
    'same-thread': (names) => `Misma rosca, otro sello: ${names}`,
    'near-thread': (names) => `Empieza a enroscar y se arranca o fuga: ${names}`,
    'npt-r':
      'NPT y R difieren en ángulo (60° y 55°) y, en casi todos los tamaños, en paso: se agarrotan y fugan.',
    'taper-in-g':
      'Un macho cónico nunca va en un orificio G: allí la rosca no sella, y lo revienta.',
    'nptf-npt': 'NPTF solo sella en seco con NPTF; con NPT necesita sellador.',
    'npsm-npt':
      'Una tuerca NPSM solo sella en un macho NPT con asiento interior de 60°, nunca en su rosca.',
    'flange-series': 'Código 61 y código 62: bocas y tornillos difieren, y las presiones también.',
  },
  sealings: {
    'face-seal': 'junta tórica en la cara plana',
    flare: 'metal con metal, cono en abocardado',
    inverted: 'metal con metal, el tubo abocardado sobre el cono saliente del orificio',
    'stud-o-ring': 'junta tórica entre rosca y hexágono, en el chaflán del orificio',
    'face-ring': 'anillo sobre la cara plana en torno al orificio',
    'cutting-edge': 'arista sobre la cara plana en torno al orificio',
    'cone-24': 'anillo cortante, o junta tórica de un cono de 24°, en el cono de 24°',
    'cone-24-hose': 'junta tórica del cono de 24°, o metal con metal, en el cono de 24°',
    'cone-swivel': 'metal con metal, cono en cono',
    npsm: 'metal con metal, en el asiento de 60° dentro del macho; no en la rosca',
    'taper-iso': 'rosca en rosca, con sellador',
    'taper-npt': 'rosca en rosca, con sellador',
    'taper-metric': 'rosca en rosca, con sellador',
    'test-point': 'junta tórica de la válvula interior',
    washer: 'arandela suelta bajo el hombro',
    dryseal: 'rosca en rosca, cresta con fondo',
    compression: 'bicono apretado sobre el tubo',
    gauge: 'arandela bajo el pivote, al fondo del orificio',
    flange: 'junta tórica en la cara plana de la boca de brida',
  },
  mates: {
    'face-seal': {
      male: 'tuerca (loca o de tubo) con casquillo plano del mismo tamaño',
      female: 'extremo macho con junta tórica en su cara plana, mismo tamaño',
    },
    flare: {
      male: 'tuerca loca, o tuerca sobre tubo abocardado, del mismo ángulo y tamaño',
      female: 'extremo macho con cono del mismo ángulo y tamaño',
    },
    inverted: {
      male: 'orificio con cono saliente al fondo, mismo tamaño, el tubo abocardado entre ambos',
      female: 'tuerca del mismo tamaño sobre tubo abocardado',
    },
    'stud-o-ring': {
      male: 'orificio con la misma rosca y chaflán para la junta',
      female: 'extremo macho con junta tórica y la misma rosca',
    },
    'face-ring': {
      male: 'orificio con la misma rosca y cara plana mecanizada alrededor',
      female:
        'extremo macho con la misma rosca y anillo o arista; en roscas G también un macho con arandela metal-goma',
    },
    'cutting-edge': {
      male: 'orificio con la misma rosca y cara plana mecanizada alrededor',
      female: 'extremo macho con la misma rosca y arista',
    },
    'cone-24': {
      male: 'tuerca de la misma serie y rosca con anillo cortante y tubo, o terminal con cono de 24° y junta tórica',
      female: 'extremo macho con cono de 24°, misma serie y rosca',
    },
    'cone-24-hose': {
      male: 'terminal con cono de 24° y junta tórica, misma serie y rosca',
      female: 'extremo macho con cono de 24°, misma serie y rosca',
    },
    'cone-swivel': {
      male: 'tuerca loca con la misma rosca y ángulo de asiento',
      female: 'extremo macho con la misma rosca y ángulo de asiento',
    },
    npsm: {
      male: 'tuerca loca NPSM del mismo tamaño',
      female: 'macho NPT del mismo tamaño con asiento interior de 60°',
    },
    'taper-iso': {
      male: 'hembra cónica (Rc) o cilíndrica (Rp) de ISO 7-1; nunca un orificio G',
      female: 'macho cónico (R) de ISO 7-1',
    },
    'taper-npt': { male: 'hembra NPT del mismo tamaño', female: 'macho NPT del mismo tamaño' },
    'taper-metric': {
      male: 'agujero métrico cilíndrico para machos cónicos (forma Z), mismo tamaño',
      female: 'macho cónico del mismo tamaño',
    },
    'test-point': {
      male: 'tuerca de una manguera de medición, M16x2',
      female: 'toma de presión, M16x2',
    },
    washer: {
      male: 'orificio con la misma rosca y cara plana mecanizada alrededor',
      female: 'extremo macho con la misma rosca y arandela suelta en el hombro',
    },
    dryseal: { male: 'hembra NPTF del mismo tamaño', female: 'macho NPTF del mismo tamaño' },
    compression: {
      male: 'tuerca y bicono del mismo tamaño sobre tubo liso',
      female: 'cuerpo del mismo tamaño y rosca, bicono y tubo',
    },
    gauge: {
      male: 'orificio de manómetro con la misma rosca y fondo plano para la arandela',
      female: 'manómetro con la misma rosca',
    },
    flange: {
      male: 'base con cuatro tornillos y dos medias bridas del mismo código y tamaño',
      female: 'boca de brida del mismo código y tamaño',
    },
  },
  methods: {
    'face-seal': 'Se aprieta a par.',
    flare: 'Se aprieta por caras desde el apriete a mano, o a par.',
    inverted: 'Se aprieta una fracción de vuelta desde el apriete a mano.',
    'stud-o-ring': 'Se aprieta a par.',
    'face-ring': 'Se aprieta a par.',
    'cutting-edge': 'Se aprieta a par.',
    'cone-24': 'Se aprieta una fracción de vuelta desde el punto firme.',
    'cone-24-hose': 'Se aprieta una fracción de vuelta desde el punto firme, o a par.',
    'cone-swivel': 'Se aprieta a par.',
    npsm: 'Se aprieta a par.',
    'taper-iso': 'Se aprieta por vueltas desde el apriete a mano.',
    'taper-npt': 'Se aprieta por vueltas desde el apriete a mano.',
    'taper-metric': 'Se aprieta por vueltas tras el apriete a mano.',
    'test-point': 'Se aprieta a mano.',
    washer: 'Se aprieta al par.',
    dryseal: 'Se aprieta por vueltas desde el apriete a mano.',
    compression: 'Se aprieta una fracción de vuelta desde el apriete a mano.',
    gauge: 'Se aprieta a par, por las caras del manómetro y nunca por su caja.',
    flange: 'Se aprieta a par, en cruz.',
  },
  always: {
    pressure: 'Nunca apriete una unión con presión.',
    spanner: 'Sujete el cuerpo con otra llave: ni el tubo ni la manguera deben torcerse.',
    ring: 'Ponga cada vez una junta tórica o un anillo nuevos.',
    leak: 'No apriete más para eliminar una fuga: desmonte y mire los asientos.',
  },
  steps: {
    'face-seal': [
      'Limpie ambas caras. Ponga una junta nueva en su ranura, algo aceitada, sin torcerla.',
      'Lleve el casquillo plano contra la cara, alineado, y enrosque la tuerca a mano.',
      'Sujete el cuerpo con otra llave y apriete al par del fabricante.',
    ],
    flare: [
      'Revise abocardado y cono: sin rayas ni grietas, con un anillo de contacto completo.',
      'Aceite rosca y cono, y enrosque la tuerca a mano hasta que los asientos se toquen.',
      'Sujete el cuerpo y apriete según las caras desde el apriete a mano, o el par, del fabricante.',
    ],
    inverted: [
      'Revise el abocardado del tubo y el cono al fondo del orificio; corte uno marcado y hágalo de nuevo.',
      'Alinee el tubo y enrosque la tuerca a mano hasta que el abocardado toque.',
      'Apriete la fracción de vuelta del fabricante.',
    ],
    'stud-o-ring': [
      'Revise el chaflán del orificio. Aceite una junta nueva y pásela sobre la rosca con un casquillo.',
      'Extremo fijo: enrosque a mano hasta que el hombro toque y apriete al par del fabricante.',
      'Extremo orientable: retire del todo la contratuerca, con la arandela arriba; enrosque a mano hasta que la arandela toque, retroceda una vuelta como mucho para orientar, sujete y apriete la contratuerca al par del fabricante.',
    ],
    'face-ring': [
      'Limpie la cara en torno al orificio; ninguna raya debe cruzarla.',
      'Ponga un anillo nuevo, aceítelo, y enrosque a mano a escuadra con la cara.',
      'Apriete al par del fabricante.',
    ],
    'cutting-edge': [
      'Limpie la cara en torno al orificio y mire la huella de una arista anterior.',
      'Enrosque a mano a escuadra con la cara.',
      'Apriete al par del fabricante.',
    ],
    'cone-24': [
      'Sierre el tubo a escuadra, desbárbelo un poco por dentro y por fuera, y límpielo.',
      'Pase primero la tuerca y luego el anillo cortante, con el filo hacia el extremo del tubo. Aceite rosca, anillo y cono.',
      'Mantenga el tubo en el tope del cono (un anillo nuevo antes en un cuerpo templado) y enrosque la tuerca a mano hasta que se ponga firme.',
      'Marque tuerca y tubo, y apriete desde ese punto firme la fracción de vuelta del fabricante, con el tubo en el tope.',
      'Desmonte y busque un reborde completo delante del filo del anillo; puede girar sobre el tubo, no deslizarse.',
      'Monte otra vez hasta la marca, y la pequeña fracción de vuelta del fabricante más.',
    ],
    'cone-24-hose': [
      'Limpie ambos conos. Ponga una junta nueva, aceitada, en la ranura del cono.',
      'Lleve el cono alineado, sin torcer la manguera, y enrosque la tuerca a mano hasta que se ponga firme.',
      'Sujete el cuerpo y apriete desde ese punto la fracción de vuelta del fabricante.',
    ],
    'cone-swivel': [
      'Revise ambos conos: sin rayas, con un anillo de contacto completo; un cono con ranura lleva junta nueva.',
      'Júntelos alineados y enrosque la tuerca a mano.',
      'Sujete el cuerpo y apriete al par del fabricante.',
    ],
    npsm: [
      'Mire dentro del macho NPT: necesita un asiento interior de 60°. Revise ambos asientos.',
      'Júntelos alineados y enrosque la tuerca a mano, sin sellador.',
      'Sujete el cuerpo y apriete al par del fabricante.',
    ],
    'taper-iso': [
      'Limpie ambas roscas. Sellador en el macho, primer hilo libre.',
      'Enrosque a mano y luego con llave, por lo común de vuelta y media a tres vueltas más (práctica común; menos en tamaños grandes).',
      'No retroceda nunca para orientar: fugaría.',
    ],
    'taper-npt': [
      'Limpie ambas roscas. Sellador en el macho, primer hilo libre.',
      'Enrosque a mano y luego con llave, por lo común de vuelta y media a tres vueltas más (práctica común; menos en tamaños grandes).',
      'No retroceda nunca para orientar: fugaría.',
    ],
    'taper-metric': [
      'Limpie ambas roscas. Sellador en el macho, primer hilo libre.',
      'Enrosque a mano y luego con llave, no más de lo que diga el fabricante: estas roscas son cortas.',
      'No retroceda nunca para orientar: fugaría.',
    ],
    'test-point': [
      'Quite antes la presión siempre que se pueda: la válvula se abre mientras se enrosca la tuerca.',
      'Limpie ambos extremos y enrosque la tuerca a mano hasta el tope, sin llave.',
      'Vuelva a poner la tapa después: guarda la válvula de la suciedad.',
    ],
    washer: [
      'Limpie la cara en torno al orificio; ninguna raya debe cruzarla.',
      'Ponga una arandela nueva, del tamaño y material que diga el fabricante, y enrosque a mano a escuadra con la cara.',
      'Apriete al par del fabricante.',
    ],
    dryseal: [
      'Limpie ambas roscas y lubrique el macho; sellador solo si el fabricante lo pide.',
      'Enrosque a mano y luego con llave, por lo común de vuelta y media a tres vueltas más (práctica común; menos en tamaños grandes).',
      'No retroceda nunca para orientar: fugaría.',
    ],
    compression: [
      'Corte el tubo a escuadra y desbárbelo. Pase la tuerca y luego el bicono.',
      'Lleve el tubo al tope y enrosque la tuerca a mano.',
      'Apriete la fracción de vuelta del fabricante desde el apriete a mano.',
    ],
    gauge: [
      'Ponga una arandela nueva al fondo del orificio.',
      'Enrosque el manómetro a mano.',
      'Apriete por sus caras al par del fabricante.',
    ],
    flange: [
      'Limpie ambas caras y ponga una junta nueva en su ranura, algo aceitada.',
      'Coloque a mano las dos medias bridas y los cuatro tornillos, con holgura pareja.',
      'Apriete en cruz por pasos al par del fabricante, con tornillos de la clase pedida.',
    ],
  },
  assemblyOf: {
    'cone-24': 'Tubo con anillo cortante',
    'cone-24-hose': 'Terminal de manguera con cono y junta tórica',
  },
  fluids: {
    mineral: 'Aceite mineral (HL, HM, HV)',
    emulsion: 'Emulsiones de aceite y agua (HFAE, HFB)',
    solution: 'Soluciones acuosas (HFAS)',
    glycol: 'Agua-glicol (HFC)',
    'phosphate-aryl': 'Éster fosfórico, arilo (HFDR)',
    'phosphate-alkyl': 'Éster fosfórico, alquilo (aviación)',
    'ester-fire': 'Éster de poliol, resistente al fuego (HFDU)',
    vegetable: 'Éster vegetal (HETG)',
    ester: 'Éster sintético (HEES)',
    polyglycol: 'Poliglicol (HEPG)',
    hydrocarbon: 'Polialfaolefina (HEPR)',
    brake: 'Líquido de frenos con glicol (ISO 4925)',
  },
  temperature: 'Temperatura del fluido',
  temperatureNote: 'Límites usuales en aceite mineral; los compuestos difieren.',
  epdm: 'El EPDM nunca toca aceite mineral, ni siquiera como grasa.',
  off: {
    title: '¿De qué es la pieza?',
    lead: 'Sin rellenar no cuenta. Puede inclinar la balanza, nunca decidir por sí solo.',
    region: 'Región',
    regions: {
      anywhere: 'cualquiera',
      'north-america': 'América del Norte',
      europe: 'Europa',
      'east-asia': 'Asia oriental',
    },
    trade: 'Clase de máquina',
    trades: {
      any: 'cualquiera',
      'mobile-hydraulics': 'hidráulica móvil o industrial',
      automotive: 'vehículo: frenos, combustible, refrigeración',
    },
  },
  turns: { count: 'Hilos', over: 'en un largo de' },
  cone: { wide: 'Extremo ancho', narrow: 'Extremo estrecho', over: 'Largo entre los dos' },
  cones: {
    24: '24° de ángulo total',
    60: '60° de ángulo total',
    30: '30° con el eje',
    37: '37° con el eje',
    45: '45° con el eje',
    none: 'ninguna lámina asienta',
  },
  marks: {
    none: 'ninguna marca',
    'left-hand': 'LH, o muescas en el hexágono',
    light: 'L (serie ligera)',
    heavy: 'S (serie pesada)',
    nptf: 'NPTF',
  },
  crests: {
    rounded: 'Crestas y fondos redondeados (55°)',
    flat: 'Crestas cortadas planas (60°)',
  },
  hands: {
    right: 'Se enrosca en sentido horario',
    left: 'Se enrosca en sentido antihorario',
  },
  endPictures: {
    fixed: 'Nada gira: rosca y cuerpo son uno',
    'swivel-nut': 'Una tuerca que gira en un terminal o cuerpo',
    'tube-nut': 'Una tuerca suelta que corre por un tubo',
    stud: 'Un macho que se enrosca en un bloque y sella en el hombro o en la rosca',
    port: 'Un agujero roscado en un bloque o cuerpo',
    'flange-head': 'Una boca plana sin rosca, sujeta por bridas',
  },
  kinds: {
    'turns-over': {
      name: 'Hilos en un largo',
      title: 'Cuente hilos con una regla',
      how: 'Ponga una regla a lo largo de la rosca. Desde una cresta cuente diez hilos (o los que haya) y lea el largo.',
    },
    'end-type': {
      name: 'Clase de extremo',
      title: '¿Qué extremo es?',
      how: '¿Qué gira, y en qué se enrosca?',
    },
    'seat-gauge': {
      name: 'Galga de asiento',
      title: 'Pruebe una galga de asiento (láminas)',
      how: 'Ponga las láminas contra el cono, en línea con el eje, a contraluz. 30°, 37° y 45° se parecen a la vista.',
    },
    'cone-size': {
      name: 'Cono con pie de rey',
      title: 'Mida el cono',
      how: 'Diámetro del extremo ancho, del estrecho y el largo entre los dos según el eje (sonda o regla). De ahí sale el ángulo.',
    },
    'nose-od': {
      name: 'Diámetro de la punta',
      title: 'Mida la punta del cono',
      how: 'A través del extremo estrecho del cono que asoma en la tuerca. Pie de rey o regla. En una manguera hace las veces del tubo.',
    },
    'crest-form': {
      name: 'Forma de las crestas',
      title: '¿Crestas redondas o planas?',
      how: 'Mire a lo largo de las crestas con lupa, donde no estén gastadas.',
    },
    'flange-thickness': {
      name: 'Espesor de la boca',
      title: 'Mida la boca de brida',
      how: '¿Qué espesor tiene el borde que sujetan las bridas? Pie de rey o regla.',
    },
    'bolt-spacing': {
      name: 'Distancia entre tornillos',
      title: 'Mida entre los tornillos',
      how: 'De centro a centro de dos tornillos, por el lado largo. Mida de borde a mismo borde.',
    },
    marking: {
      name: 'Marca',
      title: 'Busque una marca',
      how: 'Letras estampadas, o pequeñas muescas en las esquinas del hexágono.',
    },
    hand: {
      name: 'Sentido',
      title: '¿En qué sentido se enrosca?',
      how: 'Sostenga la rosca de pie: a derechas, los hilos suben hacia la derecha.',
    },
    hex: {
      name: 'Hexágono',
      title: 'Mida entre caras',
      how: 'Indicio débil: una rosca va en varios hexágonos. Pie de rey o regla entre dos caras.',
    },
  },
  femaleHow: {
    'pitch-gauge':
      'Hembra: ponga láminas dentro, en línea con el eje. Si no llegan, enrosque una pieza macho conocida.',
    'turns-over': 'Hembra: apriete dentro masilla o papel blando, sáquelo y cuente los surcos.',
    taper:
      'Hembra: enrosque un macho cilíndrico (tampón). En una cónica se aprieta a los pocos hilos; en una cilíndrica llega al fondo.',
    flank: 'Hembra: ponga la galga dentro, o tome una impronta y galgue esa.',
    'crest-form': 'Hembra: mire las crestas de la boca, con lupa y luz.',
    'tube-od': 'Diámetro exterior del tubo en que va la tuerca.',
    'seat-gauge': 'Hembra: ponga la lámina en el asiento, o contra el cono de la tuerca.',
    seat: '¿Qué dibujo se parece al interior de este extremo? La línea gruesa es donde sella.',
  },
  familyNotes: notesEs,
};
