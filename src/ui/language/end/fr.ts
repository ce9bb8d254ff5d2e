import type { Dictionary } from '../dictionary';

export const endFr: Dictionary['end'] = {
  either: 'L’une ou l’autre, selon la photo',
  ways: {
    standing:
      'Debout : ouverture vers le haut sur la carte imprimée, appareil à 30 à 40° de la verticale, pour voir la paroi opposée de l’alésage.',
    lying:
      'Couché (embouts de flexible) : un pan sur la carte imprimée, ouverture vers vous, appareil à 30 à 40° au-dessus de la table ; moins sûr que debout.',
  },
  inside: 'Le filetage est à l’intérieur',
  outside: 'Le filetage est à l’extérieur',
  refused: {
    'no-thread': {
      what: 'L’échelle a été trouvée, mais aucun filetage intérieur.',
      todo: 'Posez la pièce debout sur la carte imprimée, ouverture vers le haut, et photographiez de biais, pour que la paroi opposée de l’alésage soit visible et éclairée.',
    },
    'several-fittings': {
      what: 'Il y a plus d’un raccord dans la fenêtre.',
      todo: 'Laissez un seul raccord et reprenez la photo.',
    },
  },
  overCrests: 'sur les crêtes intérieures telles qu’elles sont',
  mouthHeight: 'hauteur de l’ouverture',
  rings: 'Cercles de l’alésage',
  shoot: {
    check: 'Assez incliné pour voir dans l’alésage',
    tooLevel: 'Inclinez le téléphone : la paroi opposée de l’alésage doit être visible',
    tooSlanted: 'Inclinez moins le téléphone',
  },
};
