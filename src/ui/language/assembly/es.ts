import type { AssemblyWords } from './en';

export const assemblyEs: AssemblyWords = {
  ends: { male: 'macho', female: 'hembra' },
  endTypes: {
    fixed: 'extremo fijo',
    'swivel-nut': 'tuerca loca',
    stud: 'extremo macho de orificio',
    port: 'orificio',
    'tube-nut': 'tuerca de tubo',
    'flange-head': 'cabeza de brida',
  },
  endRow: 'Extremo',
  form: 'Forma',
  formOpen: 'abierta: mire el anillo o la arista que sella',
  leftHand:
    'Rosca a izquierdas (LH). Aprieta en sentido antihorario; ninguna pieza a derechas le sirve. Pídala como LH y nunca fuerce una pieza a derechas.',
  nptf: 'NPT y NPTF no se distinguen midiendo. Mire las marcas o el plano de la pieza antes de elegir.',
  tapers: 'Un macho cónico va en Rp (cilíndrica) o Rc (cónica) de ISO 7-1, nunca en un orificio G.',
  lookAlikes: 'Se parecen, nunca los fuerce juntos',
  alsoUses: 'También con esta rosca, fuera de estas tablas',
  inMating: 'en el macho que acopla',
  byForm: 'según la forma, vea los datos del fabricante',
  grooves:
    'Las ranuras son simples o de retención (estrechas en la boca): la junta es del mismo tamaño.',
  sealings: {
    'face-seal': 'junta tórica en la cara plana del macho',
    flare: 'metal con metal, cono en abocardado',
    inverted: 'metal con metal, abocardado del tubo sobre el cono del fondo del orificio',
    'stud-o-ring': 'junta tórica bajo el hexágono, en el chaflán del orificio',
    'stud-retained-ring':
      'junta tórica en su anillo de retención, sobre la cara plana en torno al orificio',
    'face-ring': 'anillo o arista sobre la cara plana en torno al orificio',
    'cone-24': 'anillo cortante, o junta tórica de un cono, en el cono de 24°',
    'cone-24-hose': 'cono con junta tórica, o anillo cortante en el tubo, en el cono de 24°',
    'cone-swivel': 'metal con metal, cono en cono',
    taper: 'rosca en rosca, con sellador',
    flange: 'junta tórica en la cara plana de la cabeza de brida',
  },
  mates: {
    'face-seal': {
      male: 'tuerca loca con casquillo plano del mismo tamaño',
      female: 'macho del mismo tamaño con junta tórica en la cara',
    },
    flare: {
      male: 'tuerca loca del mismo ángulo y tamaño, en tubo abocardado o manguera',
      female: 'macho con cono exterior del mismo ángulo y tamaño',
    },
    inverted: {
      male: 'orificio de abocardado invertido del mismo tamaño, con el tubo abocardado',
      female: 'tuerca de tubo del mismo tamaño en tubo abocardado',
    },
    'stud-o-ring': {
      male: 'orificio con la misma rosca y chaflán para la junta',
      female: 'extremo macho de la misma norma y tamaño, con su junta tórica',
    },
    'stud-retained-ring': {
      male: 'orificio con la misma rosca y ancha cara plana alrededor',
      female: 'extremo macho de la misma norma y tamaño, con anillo o arista',
    },
    'face-ring': {
      male: 'orificio con la misma rosca y cara plana mecanizada alrededor',
      female: 'extremo macho de la misma norma y tamaño, con anillo o arista',
    },
    'cone-24': {
      male: 'tuerca de la misma serie (L o S) con anillo cortante y tubo, o terminal de manguera con cono de 24°',
      female: 'macho de la misma serie (L o S) y tamaño con cono interior de 24°',
    },
    'cone-24-hose': {
      male: 'tuerca de la misma serie (L o S) con anillo cortante y tubo, o terminal de manguera con cono de 24°',
      female: 'macho de la misma serie (L o S) y tamaño con cono interior de 24°',
    },
    'cone-swivel': {
      male: 'tuerca loca con la misma rosca y ángulo de asiento',
      female: 'macho con la misma rosca y ángulo de asiento',
    },
    taper: {
      male: 'rosca hembra de la misma norma',
      female: 'rosca macho cónica de la misma norma',
    },
    flange: {
      male: 'boca de brida con cuatro tornillos y dos medias bridas del mismo código y tamaño',
      female: 'cabeza de brida del mismo código y tamaño, con medias bridas',
    },
  },
  steps: {
    'face-seal': [
      'Limpie ambas caras. Ponga una junta nueva en su ranura, algo aceitada, sin torcerla.',
      'Lleve el casquillo plano contra la cara, alineado, y enrosque la tuerca a mano.',
      'Sujete el cuerpo con otra llave y apriete la tuerca al par del fabricante.',
    ],
    flare: [
      'Revise abocardado y cono: sin rayas ni grietas, con un anillo de contacto completo.',
      'Aceite rosca y cono, y enrosque la tuerca a mano hasta que los asientos se toquen.',
      'Sujete el cuerpo con otra llave y gire la tuerca las caras del fabricante desde el apriete a mano, o al par.',
      'Si fuga, no apriete más para eliminar la fuga: quite la presión y mire los asientos.',
    ],
    inverted: [
      'Revise el abocardado del tubo y el cono del fondo; un abocardado marcado se corta y se rehace.',
      'Empuje el tubo recto contra el cono y enrosque la tuerca de tubo a mano.',
      'Sujete el cuerpo y apriete el giro o el par del fabricante; el tubo no debe girar.',
    ],
    'stud-o-ring': [
      'Revise el chaflán del orificio. Aceite una junta nueva y pásela sobre la rosca con un casquillo.',
      'Extremo fijo: enrosque a mano hasta que el hexágono toque y apriete al par del fabricante.',
      'Extremo orientable: retire del todo la contratuerca, con la arandela arriba; enrosque a mano hasta que la arandela toque; retroceda una vuelta como mucho para orientar.',
      'Sujételo así con otra llave y apriete la contratuerca al par del fabricante.',
    ],
    'stud-retained-ring': [
      'Limpie la cara en torno al orificio; ninguna raya debe cruzarla. Ponga una junta tórica nueva en su anillo de retención, algo aceitada.',
      'Extremo fijo (forma G): enrosque a mano hasta que el anillo toque y apriete al par del fabricante.',
      'Extremo orientable (forma H): retire la contratuerca, enrosque hasta que el anillo toque, retroceda una vuelta como mucho para orientar, sujete con otra llave y apriete la contratuerca al par del fabricante.',
    ],
    'face-ring': [
      'Limpie la cara en torno al orificio; ninguna raya debe cruzarla.',
      'Ponga un anillo nuevo (si esta forma lo lleva), aceítelo, y enrosque a mano a escuadra con la cara.',
      'Apriete al par del fabricante.',
    ],
    'cone-24': [
      'Corte el tubo a escuadra y desbárbelo. Meta la tuerca y luego el anillo cortante, con el filo hacia la punta del tubo.',
      'Aceite rosca, cono y anillo. Un anillo nuevo se premonta mejor en una herramienta templada.',
      'Empuje el tubo firme contra el tope, manténgalo ahí y enrosque la tuerca hasta que se ponga firme. Marque tuerca y tubo.',
      'Sujete el cuerpo con otra llave y gire la tuerca el ángulo del fabricante desde el punto firme.',
      'Desmonte y mire: un reborde completo de metal debe alzarse ante el filo. El anillo puede girar, no deslizarse.',
      'Vuelva a montar hasta la marca y luego el pequeño giro del fabricante.',
    ],
    'cone-24-hose': [
      'Revise ambos conos. Ponga una junta tórica nueva en la ranura del cono, algo aceitada. (Un tubo con anillo cortante se premonta antes.)',
      'Junte los extremos alineados y enrosque la tuerca a mano hasta que se ponga firme.',
      'Sujete el cuerpo con otra llave y gire la tuerca el ángulo del fabricante desde el punto firme; la manguera no debe torcerse.',
    ],
    'cone-swivel': [
      'Revise ambos conos: sin rayas, con un anillo de contacto completo; si el cono lleva junta tórica, ponga una nueva.',
      'Júntelos alineados y enrosque la tuerca a mano.',
      'Sujete el cuerpo con otra llave y apriete al par del fabricante.',
    ],
    taper: [
      'Limpie ambas roscas. Sellador en el macho, primer hilo libre; las roscas de sellado en seco llevan lubricante donde no se pida sellador.',
      'Enrosque a mano y luego con llave, por lo común de vuelta y media a tres vueltas tras el apriete a mano (práctica común).',
      'No retroceda nunca para orientar: fugaría. No debe entrar en un orificio G ni en otro cilíndrico que no sea Rp.',
    ],
    flange: [
      'Limpie ambas caras y ponga una junta nueva en su ranura, algo aceitada.',
      'Coloque a mano las dos medias bridas y los cuatro tornillos, con holgura pareja.',
      'Apriete en cruz por pasos al par del fabricante, con tornillos de la clase pedida.',
    ],
  },
};
