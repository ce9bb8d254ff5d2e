import type { Dictionary } from '../dictionary';

export const referenceFr: Dictionary['reference'] = {
  atHand: 'Qu’avez-vous à côté ?',
  choice: {
    card: {
      name: 'Carte imprimée',
      how: 'Posez le raccord dans la fenêtre de la carte étalon, tout l’anneau de repères visible.',
      settles: 'Pas et diamètre : environ la moitié des filetages par la photo seule.',
    },
    id1: {
      name: 'Carte bancaire',
      how: 'Posez le raccord sur la table, à un doigt de la carte, les quatre bords visibles. De préférence une carte de bibliothèque ou le dos d’une carte bancaire.',
      settles:
        'Le pas et son rapport au diamètre : la plupart des filetages, parfois avec une mesure de plus.',
    },
    sheet: {
      name: 'Feuille de papier',
      how: 'Posez le raccord au milieu d’une feuille vierge, les quatre bords visibles, la table plus sombre que la feuille. Photographiez en pleine résolution.',
      settles:
        'Les filetages assez gros, à partir de M12 environ ; pour les petits, la feuille laisse trop peu de pixels.',
    },
    rule: {
      name: 'Réglet',
      how: 'Posez le réglet à côté du raccord et photographiez bien d’aplomb, d’aussi loin que l’image reste nette. Deux graduations sont marquées ensuite.',
      settles: 'Souvent le pas ; le diamètre reste ouvert, un pied à coulisse le détermine.',
    },
  },
  settles: 'Détermine :',
  paper: 'Format de la feuille',
  privacy:
    'Sa face est recouverte sur cet appareil avant que la photo soit gardée. Aucun numéro n’est enregistré.',
  painted: 'La face de la carte bancaire est recouverte dans ce qui est gardé.',
  showCorners: 'Montrer ses coins',
  whatIsIt: 'De quoi s’agit-il ?',
  kind: { id1: 'Carte bancaire (ID-1)', a4: 'Feuille A4', letter: 'Feuille Letter' },
  cornersText:
    'Faites glisser les quatre marques là où les côtés se rencontrent : au-delà des coins arrondis d’une carte. Les bords sont ensuite ajustés près d’elles.',
  corner: (n) => `Coin ${n}`,
  markRule: 'Marquer le réglet',
  markText:
    'Faites glisser les deux marques sur deux graduations éloignées et saisissez ce qui les sépare. La loupe montre la marque déplacée.',
  onScreen: {
    title: 'Taille sur cet écran',
    lead: 'Posez une carte bancaire sur l’écran et réglez jusqu’à ce que le cadre ait exactement sa taille. Le réglage est gardé pour cet appareil.',
    slider: 'Taille du cadre',
    smaller: 'Plus petit',
    larger: 'Plus grand',
    keep: 'C’est ajusté',
    again: 'Régler de nouveau',
    tooSmall:
      'La carte entière ne tient pas sur cet écran : tournez l’appareil ou imprimez la carte.',
    shown: (percent) => `Affichée à ${percent} % de la taille imprimée.`,
    use: 'Utiliser cette carte',
    name: (device) => `Sur cet écran (${device})`,
    glass: 'Posez le raccord avec précaution sur le verre : un film transparent évite les rayures.',
  },
  camera: {
    inView: 'Carte ou feuille visible',
    bring: {
      id1: 'Amenez la carte bancaire dans le cadre, le raccord à côté',
      sheet: 'Amenez toute la feuille dans le cadre',
      rule: 'D’aplomb, réglet et filetage visibles',
    },
  },
};
