import type { Dictionary } from '../dictionary';

export const referenceEs: Dictionary['reference'] = {
  atHand: '¿Qué hay al lado?',
  choice: {
    card: {
      name: 'Tarjeta impresa',
      how: 'Ponga el racor en la ventana de la tarjeta patrón, con todo el anillo de marcas a la vista.',
      settles: 'Paso y diámetro: cerca de la mitad de las roscas con la foto sola.',
    },
    id1: {
      name: 'Tarjeta bancaria',
      how: 'Ponga el racor en la mesa a un dedo de la tarjeta, con los cuatro bordes a la vista. Mejor una tarjeta de biblioteca o el dorso de una bancaria.',
      settles:
        'El paso y su relación con el diámetro: la mayoría de las roscas, a veces con una medida más.',
    },
    sheet: {
      name: 'Hoja de papel',
      how: 'Ponga el racor en medio de una hoja en blanco, con los cuatro bordes a la vista y la mesa más oscura que la hoja. Fotografíe a plena resolución.',
      settles:
        'Roscas no muy finas, desde M12 más o menos; en las pequeñas la hoja deja muy pocos píxeles.',
    },
    rule: {
      name: 'Regla',
      how: 'Ponga la regla junto al racor y fotografíe justo desde arriba, tan lejos como salga nítido. Después se marcan dos divisiones.',
      settles: 'A menudo el paso; el diámetro queda abierto y lo decide un pie de rey.',
    },
  },
  settles: 'Decide:',
  paper: 'Tamaño de la hoja',
  privacy:
    'Su cara se tapa en este dispositivo antes de guardar la foto. No se guarda ningún número.',
  painted: 'La cara de la tarjeta bancaria está tapada en lo que se guarda.',
  showCorners: 'Mostrar sus esquinas',
  whatIsIt: '¿Qué es?',
  kind: { id1: 'Tarjeta bancaria (ID-1)', a4: 'Hoja A4', letter: 'Hoja Letter' },
  cornersText:
    'Arrastre las cuatro marcas adonde se encuentran los lados: más allá de las esquinas redondas de una tarjeta. Los bordes se ajustan después cerca de ellas.',
  corner: (n) => `Esquina ${n}`,
  markRule: 'Marcar la regla',
  markText:
    'Arrastre las dos marcas a dos divisiones alejadas y escriba lo que hay entre ellas. La lupa muestra la marca que se mueve.',
  onScreen: {
    title: 'Tamaño en esta pantalla',
    lead: 'Ponga una tarjeta bancaria sobre la pantalla y ajuste hasta que el marco tenga justo su tamaño. Se guarda para este dispositivo.',
    slider: 'Tamaño del marco',
    smaller: 'Más pequeño',
    larger: 'Más grande',
    keep: 'Coincide',
    again: 'Ajustar de nuevo',
    tooSmall:
      'La tarjeta entera no cabe en esta pantalla: gire el dispositivo o imprima la tarjeta.',
    shown: (percent) => `Mostrada al ${percent} % del tamaño impreso.`,
    use: 'Usar esta tarjeta',
    name: (device) => `En esta pantalla (${device})`,
    glass: 'Ponga el racor con cuidado sobre el cristal: una lámina transparente evita arañazos.',
  },
  camera: {
    inView: 'Tarjeta u hoja a la vista',
    bring: {
      id1: 'Lleve la tarjeta bancaria al marco, con el racor al lado',
      sheet: 'Lleve toda la hoja al marco',
      rule: 'Justo desde arriba, con regla y rosca a la vista',
    },
  },
};
