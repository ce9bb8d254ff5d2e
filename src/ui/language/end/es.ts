import type { Dictionary } from '../dictionary';

export const endEs: Dictionary['end'] = {
  either: 'Da igual: lo dice la foto',
  ways: {
    standing:
      'De pie: boca hacia arriba sobre la tarjeta impresa, cámara a 30–40° de la vertical, para que vea la pared opuesta del agujero.',
    lying:
      'Tumbado (extremos de manguera): sobre una cara del hexágono en la tarjeta impresa, boca hacia usted, cámara a 30–40° sobre la mesa; menos seguro que de pie.',
  },
  inside: 'La rosca está por dentro',
  outside: 'La rosca está por fuera',
  refused: {
    'no-thread': {
      what: 'Se ha encontrado la escala, pero ninguna rosca interior.',
      todo: 'Ponga la pieza de pie sobre la tarjeta impresa, boca hacia arriba, y haga la foto inclinada, para que la pared opuesta del agujero se vea y tenga luz.',
    },
    'several-fittings': {
      what: 'Hay más de un racor en la ventana.',
      todo: 'Deje un solo racor y repita la foto.',
    },
  },
  overCrests: 'sobre las crestas interiores tal como están',
  mouthHeight: 'altura de la boca',
  rings: 'Círculos del agujero',
  shoot: {
    check: 'Bastante inclinado para ver dentro',
    tooLevel: 'Incline el teléfono: debe verse la pared opuesta del agujero',
    tooSlanted: 'Incline menos el teléfono',
  },
};
