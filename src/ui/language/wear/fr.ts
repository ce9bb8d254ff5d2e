import type { WearWords } from './en';

export const wearFr: WearWords = {
  title: 'Celui-ci est-il encore bon ?',
  lead: 'Pour un embout mâle usagé : ce qui parle contre lui, et quel calibre le dirait. Rien ici ne libère une pièce pour la pression.',
  start: 'Contrôler un filetage usagé',
  toSheet: 'Vers la fiche',
  stop: 'Laisser cette question de côté',
  stopped: 'Les réponses sur l’usure sont effacées.',
  femaleEnd:
    'Les limites données ici sont celles des filetages mâles. Un embout femelle se juge à son siège et aux tampons ENTRE et N’ENTRE PAS.',
  thread: 'Filetage qu’il devrait avoir',
  threadHint: 'tel que 3/4-16 UNF',
  threadEmpty: 'Laissé vide : celui que trouve la photo.',
  threadUnknown:
    'Aucun filetage de ce nom dans les tables. Écrivez-le comme 3/4-16 UNF, M22x1.5 ou G1/2.',
  threadMissing: 'Dites d’abord quel filetage il devrait avoir.',
  found: (name) => `Comme trouvé : ${name}`,
  candidate: (name, share) => `${name} · ${share}`,
  notFound: 'Le filetage n’est pas établi. Choisissez celui que cette pièce devrait avoir.',
  class: 'Classe',
  beforehand: 'Avant de vous y fier',
  widthOf: (name, width, need) =>
    `La classe ${name} est large de ${width} mm sur les crêtes. Seule une mesure plus sûre que ± ${need} mm peut y trouver une crête. Un pied à coulisse en trois endroits l’est (± 0,04 mm) ; une photo souvent pas.`,
  photoDecidesNothing: (u, width, by) =>
    `Cette photo vaut ± ${u} mm, la classe est large de ${width} mm : aucune pièce ne pourrait y être trouvée conforme. Elle ne montre que des crêtes à plus de ${by} mm au-dehors.`,
  photoCanDecide: (u, width) =>
    `Cette photo vaut ± ${u} mm, la classe est large de ${width} mm : elle peut décider, sauf près d’une limite.`,
  wouldDecide:
    'Un pied à coulisse en trois endroits décide pour les crêtes, les bagues ENTRE et N’ENTRE PAS pour le filetage, l’œil ou un calibre de siège pour le siège.',
  taperNote:
    'Un filetage conique se juge à la course de sa bague-calibre, non à ses crêtes. Aucune photo ne décide.',
  noClass:
    'Les limites de ce filetage ne sont pas dans ces tables. Ses bagues ENTRE et N’ENTRE PAS décident.',
  photoTitle: 'Avec une photo',
  photoText:
    'Montre la hauteur de chaque crête. De préférence grande, nette et d’en haut, sur la carte.',
  readingsTitle: 'Avec des mesures seules',
  readingsText:
    'Regarder, visser à la main, calibrer, et poser le pied à coulisse sur les crêtes en trois endroits.',
  goOn: 'Continuer avec des mesures',
  finding: 'Constat',
  levels: {
    replace: 'À remplacer',
    gauge: 'À calibrer avant emploi',
    none: 'Rien de constaté jusqu’ici',
    nothing: 'Rien encore de regardé',
  },
  levelText: {
    replace: 'La plus grave des raisons ci-dessous décide.',
    gauge: 'Ce qui a été vu ne condamne pas la pièce et ne l’accepte pas non plus.',
    none: 'Rien de ce qui a été regardé ne parle contre elle. Cela n’accepte pas le filetage et ne le libère pas pour la pression.',
    nothing: 'Répondez de haut en bas : c’est l’ordre dans lequel le métier regarde.',
  },
  shortLevels: { replace: 'à remplacer', gauge: 'à calibrer', none: 'rien contre' },
  notLooked: 'Non regardé',
  reasons: {
    'seal-scratched': 'Portée d’étanchéité rayée : elle n’étanchera plus.',
    'turns-torn': 'Premiers filets arrachés ou rabattus : ils entailleraient le filetage opposé.',
    'turns-burred': 'Premiers filets bavurés : ébavurer, puis calibrer.',
    'first-turns-short':
      'Sur la photo, les premières crêtes sont plus basses que les autres : chercher des filets arrachés ou rabattus.',
    rocks: 'Bascule sur sa pièce : flancs usés. Les bagues décident.',
    stiff: 'Tourne dur : bavure, saleté, pièce faussée ou autre filetage. Nettoyer, puis calibrer.',
    'not-go-beyond':
      'La bague N’ENTRE PAS dépasse deux tours : le diamètre sur flancs est trop petit.',
    'go-stops': 'La bague ENTRE bloque : surcote, pièce faussée, abîmée ou autre filetage.',
    'plane-deep': 'Entre nettement trop loin dans sa bague-calibre : usé.',
    'plane-short':
      'N’entre pas dans sa bague-calibre aussi loin qu’il devrait : surcote, abîmé ou autre filetage.',
    'plane-open': 'À la limite de sa bague-calibre : relire, bien propre.',
    'plane-within': 'La bague-calibre s’arrête dans ses limites.',
    'another-thread': 'La photo montre un autre pas que celui de ce filetage.',
    'crests-short':
      'Sur la photo, certaines crêtes semblent plus basses que les autres : y chercher coups et arrachements ; un reflet peut faire de même.',
    uneven: 'Inégal : le diamètre varie autour de la pièce ou le long d’elle.',
    'crest-below':
      'Crêtes sous leur classe. Le constat le plus bénin : les bagues décident pour la tenue et l’ajustement.',
    'crest-below-rings-pass':
      'Crêtes sous leur classe, mais les deux bagues sont bonnes : il porte moins de crête.',
    'crest-above': 'Crêtes au-dessus de leur classe : bavure, revêtement ou autre filetage.',
    'crest-open': 'Crêtes : non déterminé.',
    'crest-within': 'Crêtes dans leur classe. Cela n’accepte pas le filetage.',
  },
  questions: {
    seal: {
      name: 'Portée d’étanchéité',
      how: 'Cône, gorge ou face plane, en lumière rasante. Passez l’ongle en travers : une rayure en travers de la portée, qui l’accroche, et c’est fini.',
      answers: { unmarked: 'sans marque', scratched: 'rayée' },
    },
    firstTurns: {
      name: 'Deux ou trois premiers filets',
      how: 'Entiers jusqu’à la crête, sans arête rabattue, bavure ni méplat ?',
      answers: { whole: 'entiers', burred: 'bavurés', torn: 'arrachés ou rabattus' },
    },
    byHand: {
      name: 'À la main',
      how: 'Propre, visser une bonne pièce sur toute la longueur. Puis essayer de la faire basculer.',
      answers: { free: 'libre, sans bascule', stiff: 'dur', rocks: 'bascule' },
    },
    goRing: {
      name: 'Bague ENTRE',
      how: 'Passe à la main sur tout le filetage (ISO 1502, ASME B1.2) ?',
      answers: { 'runs-on': 'passe', stops: 'bloque' },
    },
    notGoRing: {
      name: 'Bague N’ENTRE PAS',
      how: 'À la main, sans forcer : deux tours au plus (ISO 1502).',
      answers: { holds: 'tient en deux tours', 'beyond-two': 'dépasse deux tours' },
    },
  },
  notLookedAt: 'non regardé',
  caliper: 'Pied à coulisse sur les crêtes',
  caliperHow: 'Becs d’équerre avec l’axe, en trois endroits. La plus grande de trois à chacun.',
  places: { end: 'Extrémité libre', middle: 'Milieu', last: 'Dernier filet complet' },
  ring: 'Bague-calibre du cône',
  ringHow:
    'Visser la bague à la main. Où se trouve la petite extrémité, en tours depuis la face de la bague ?',
  ringPast: 'tours au-delà de la face',
  ringShort: 'tours en deçà',
  ringTurns: 'Tours',
  ringWrong: 'Tapez un nombre de tours entre 0 et 100, tel que 1,5.',
  clear: 'Effacer',
  crests: 'Crêtes',
  verdicts: {
    within: 'Dans la classe. Cela vaut pour la crête seule et n’accepte pas le filetage.',
    below: (by) => `Sous sa classe de ${by} mm.`,
    above: (by) => `Au-dessus de sa classe de ${by} mm : bavure, revêtement ou autre filetage.`,
  },
  undecided: {
    'near-limit': 'Indécidable : trop près d’une limite pour cette incertitude.',
    'too-uncertain': 'Indécidable : la mesure est moins sûre que la classe n’est large.',
    tapered: 'Un filetage conique se juge à sa bague-calibre, non à ses crêtes.',
    'no-class': 'Les limites de ce filetage ne sont pas dans ces tables.',
    'another-pitch': 'Non jugé : la photo montre un autre pas que celui de ce filetage.',
    unresolved: 'La photo ne résout pas le diamètre.',
    'places-missing':
      'Ce qui a été mesuré est dans la classe ; les autres endroits restent à mesurer.',
  },
  by: { photo: 'photo', caliper: 'pied à coulisse' },
  rule: 'Décidé à 95 % avec une bande de garde de 1,65 u (ISO 14253-1). ± est l’intervalle à 95 %.',
  scale: (name, from, to) => `Classe ${name} : ${from} à ${to} mm sur les crêtes`,
  pitchDiameterOf: (from, to) =>
    `Diamètre sur flancs ${from} à ${to} mm : ce que jugent les bagues, non la photo.`,
  flank: (seen, nominal) => `Angle des flancs ${seen} ; selon la norme ${nominal}.`,
  flankOpen: 'Forme des flancs : non résolue.',
  chart: 'Hauteur de chaque crête',
  chartText:
    'Rayon de chaque crête avec son ± ; en gras, ce qu’elle ne partage pas avec les autres. Derrière, la classe.',
  chartFrom:
    'Compté depuis l’extrémité libre de la partie mesurée. Ce que la photo ne montre pas n’est pas jugé.',
  chartName: (count, short) =>
    `Hauteurs de ${count} crêtes ; ${short} sont plus basses que les autres`,
  chartNone:
    'Pas de crêtes isolées sur cette fiche : à côté d’un réglet, ou sur une image venue d’une messagerie, elles ne sont pas mesurées.',
  alongAxis: 'mm depuis l’extrémité libre',
  sides: { left: 'côté gauche', right: 'côté droit' },
  band: 'classe',
  turn: 'Filet',
  side: 'Côté',
  at: 'À',
  height: 'Hauteur',
  short: 'Plus basse que les autres de',
  list: 'En liste',
  marks: 'Marqué sur la photo',
  markShort: 'plus basse que les autres : arrachée, rabattue ou coup',
  markBelow: 'sous la classe : aplatie',
  noMarks: 'Aucune crête n’est plus basse que les autres ni sous sa classe.',
  bears: 'Ce qui porte encore',
  overlap: (left, limit, share) =>
    `Par côté, ${left} mm de crête portent encore au-dessus de l’alésage le plus large : ${share} des ${limit} mm à la limite de classe.`,
  overlapNone: 'Rien de la crête ne dépasse l’alésage le plus large.',
  overlapNote: 'La tenue dépend du diamètre sur flancs, que jugent les bagues.',
  overlapName: (name) =>
    `Demi-coupe de ${name} dans sa pièce, à l’échelle : en gras, le flanc qui porte encore ; en tirets, la crête à la limite de classe`,
  overlapKeys: {
    internal: 'pièce opposée, alésage le plus large',
    external: 'cette pièce',
    limit: 'crête à la limite de classe',
  },
  round: 'Autour de la pièce',
  roundOne:
    'Une photo montre un diamètre. Tournez la pièce d’un quart de tour et prenez-en une autre.',
  roundEven: (apart) => `Les photos diffèrent de ${apart} mm : pas plus que le hasard.`,
  roundUneven: (apart) =>
    `Les photos diffèrent de ${apart} mm : usure inégale, ou pas la même pièce. Le plus petit diamètre compte.`,
  addQuarter: 'Ajouter une photo, pièce tournée d’un quart',
  takeQuarter: 'En prendre une, pièce tournée d’un quart',
  confirm:
    'Décomprimer avant de desserrer quoi que ce soit. Calibrer avant de remettre en pression. Joints toriques toujours neufs.',
  onSheet: (level) => `Encore bon ? ${level}`,
};
