import { notesFr } from '../notes/fr';
import type { Trade } from './trade';

export const tradeFr: Trade = {
  gender: { male: 'mâle', female: 'femelle' },
  endTypes: {
    fixed: 'fixe',
    'swivel-nut': 'écrou tournant',
    'tube-nut': 'écrou de tube',
    stud: 'implantation',
    port: 'orifice',
    'flange-head': 'tête de bride',
  },
  ordered: {
    fixed: 'Extrémité fixe',
    'swivel-nut': 'Écrou tournant',
    'tube-nut': 'Écrou de tube',
    stud: 'Implantation',
    port: 'Orifice',
    'flange-head': 'Tête de bride',
  },
  or: 'ou',
  form: (form) => `forme ${form}`,
  size: (size) => `taille ${size}`,
  orderLine: 'Pour commander',
  toAdd: {
    stud: 'Reste à préciser : la matière, et fixe ou orientable.',
    other: 'Reste à préciser : la matière.',
  },
  oRingOrdered: (designation, hardness) =>
    `joint torique ${designation}${hardness && `, NBR ${hardness}`}`,
  inTheMate: (ring) => `dans l’extrémité mâle qui s’y monte : ${ring}`,
  inTheStud: (ring) => `sur l’implantation qui s’y visse : ${ring}`,
  captive: 'Les gorges sont simples ou retenantes ; les deux prennent ce joint.',
  alsoCalled: 'Dit aussi',
  leftHand: 'Filetage à gauche (LH)',
  leftHandWarning:
    'Il se visse dans le sens antihoraire. Aucune pièce ordinaire de cette taille ne convient : commandez-la en LH, et ne forcez jamais une pièce à droite.',
  nearest: (thread, off, large, male) =>
    `Rien ne concorde. Le plus proche est ${thread} ; ceci est ${off} trop ${large ? 'grand' : 'petit'} pour une extrémité ${male ? 'mâle' : 'femelle'}.`,
  missing: (reading, tools) =>
    `Rien de ce que vous avez ne le déterminerait. Ce qui le ferait : ${reading}${tools && ` (${tools})`}.`,
  cannotTell: 'Je ne sais pas',
  cannotTellOf: (what) => `Impossible à dire : ${what}`,
  dryseal: 'Au filetage, rien ne distingue NPTF de NPT : cherchez la marque NPTF sur la pièce.',
  notes: 'Le reconnaître, ne pas le confondre',
  also: 'Aussi avec ce filetage',
  alsoUsed: {
    banjo: 'Les vis creuses aussi : un perçage en travers, une rondelle de chaque côté de l’œil.',
    'universal-nose':
      'Les embouts à nez universel vont dans le cône de 24° et dans celui de 60° : regardez le nez lui-même.',
    'jis-cone-60':
      'JIS B 8363 a aussi des mâles à siège creux de 60° ; qu’un écrou BS 5200 y soit étanche dépend de leur longueur de filetage.',
  },
  pressure: {
    title: 'Pression de service',
    none: 'Pas donnée ici : elle dépend de la norme, de son édition, de la taille et du modèle. Voyez le fabricant ; la plus basse de toutes les pièces commande.',
  },
  never: {
    title: 'Ne jamais joindre à',
    'same-thread': (names) => `Même filetage, autre étanchéité : ${names}`,
    'near-thread': (names) => `S’amorce, puis arrache ou fuit : ${names}`,
    'npt-r':
      'NPT et R diffèrent d’angle (60° et 55°) et, dans la plupart des tailles, de pas : ils coincent et fuient.',
    'taper-in-g':
      'Un mâle conique ne va jamais dans un orifice G : rien n’y est étanche dans le filet, et il l’éclate.',
    'nptf-npt': 'NPTF n’est étanche à sec qu’avec NPTF ; avec NPT il faut un produit d’étanchéité.',
    'npsm-npt':
      'Un écrou NPSM n’est étanche que sur un mâle NPT au siège intérieur de 60°, jamais sur son filet.',
    'flange-series': 'Code 61 et code 62 : têtes et vis diffèrent, les pressions aussi.',
  },
  sealings: {
    'face-seal': 'joint torique dans la face plane',
    flare: 'métal sur métal, cône dans évasement',
    inverted: 'métal sur métal, le tube évasé sur le cône saillant de l’orifice',
    'stud-o-ring': 'joint torique entre filet et hexagone, dans le chanfrein de l’orifice',
    'face-ring': 'bague sur la face plane autour de l’orifice',
    'cutting-edge': 'arête sur la face plane autour de l’orifice',
    'cone-24': 'bague coupante, ou joint torique d’un cône de 24°, dans le cône de 24°',
    'cone-24-hose': 'joint torique du cône de 24°, ou métal sur métal, dans le cône de 24°',
    'cone-swivel': 'métal sur métal, cône dans cône',
    npsm: 'métal sur métal, sur le siège de 60° dans le mâle ; pas dans le filet',
    'taper-iso': 'filet dans filet, avec produit d’étanchéité',
    'taper-npt': 'filet dans filet, avec produit d’étanchéité',
    'taper-metric': 'filet dans filet, avec produit d’étanchéité',
    'test-point': 'joint torique du clapet intérieur',
    washer: 'rondelle libre sous l’épaulement',
    dryseal: 'filet dans filet, crête sur fond',
    compression: 'olive serrée sur le tube',
    gauge: 'rondelle sous le téton, au fond de l’orifice',
    flange: 'joint torique dans la face plane de la tête de bride',
  },
  mates: {
    'face-seal': {
      male: 'écrou (tournant ou de tube) avec douille plane de même taille',
      female: 'extrémité mâle à joint torique dans sa face plane, même taille',
    },
    flare: {
      male: 'écrou tournant, ou écrou sur tube évasé, de même angle et de même taille',
      female: 'extrémité mâle à cône de même angle et de même taille',
    },
    inverted: {
      male: 'orifice à cône saillant au fond, même taille, le tube évasé entre les deux',
      female: 'écrou de même taille sur tube évasé',
    },
    'stud-o-ring': {
      male: 'orifice de même filetage avec chanfrein pour le joint',
      female: 'implantation à joint torique de même filetage',
    },
    'face-ring': {
      male: 'orifice de même filetage avec face plane usinée autour',
      female:
        'implantation de même filetage à bague ou arête ; pour G aussi un mâle avec rondelle métal-caoutchouc',
    },
    'cutting-edge': {
      male: 'orifice de même filetage avec face plane usinée autour',
      female: 'implantation de même filetage à arête',
    },
    'cone-24': {
      male: 'écrou de même série et de même filetage avec bague coupante et tube, ou embout à cône de 24° et joint torique',
      female: 'extrémité mâle à cône de 24°, même série et même filetage',
    },
    'cone-24-hose': {
      male: 'embout à cône de 24° et joint torique, même série et même filetage',
      female: 'extrémité mâle à cône de 24°, même série et même filetage',
    },
    'cone-swivel': {
      male: 'écrou tournant de même filetage et de même angle de siège',
      female: 'extrémité mâle de même filetage et de même angle de siège',
    },
    npsm: {
      male: 'écrou tournant NPSM de même taille',
      female: 'mâle NPT de même taille, au siège intérieur de 60°',
    },
    'taper-iso': {
      male: 'femelle conique (Rc) ou cylindrique (Rp) de l’ISO 7-1 ; jamais un orifice G',
      female: 'mâle conique (R) de l’ISO 7-1',
    },
    'taper-npt': { male: 'femelle NPT de même taille', female: 'mâle NPT de même taille' },
    'taper-metric': {
      male: 'trou métrique cylindrique pour implantations coniques (forme Z), même taille',
      female: 'implantation conique de même taille',
    },
    'test-point': {
      male: 'écrou d’un flexible de mesure, M16x2',
      female: 'prise de pression, M16x2',
    },
    washer: {
      male: 'orifice de même filetage avec face plane usinée autour',
      female: 'implantation de même filetage à rondelle libre sous l’épaulement',
    },
    dryseal: { male: 'femelle NPTF de même taille', female: 'mâle NPTF de même taille' },
    compression: {
      male: 'écrou et olive de même taille sur tube lisse',
      female: 'corps de même taille et de même filetage, olive et tube',
    },
    gauge: {
      male: 'orifice de manomètre de même filetage, à fond plat pour la rondelle',
      female: 'manomètre de même filetage',
    },
    flange: {
      male: 'plan à quatre vis et deux demi-brides de même code et de même taille',
      female: 'tête de bride de même code et de même taille',
    },
  },
  methods: {
    'face-seal': 'Se serre au couple.',
    flare: 'Se serre en pans à partir du serrage à la main, ou au couple.',
    inverted: 'Se serre d’une fraction de tour à partir du serrage à la main.',
    'stud-o-ring': 'Se serre au couple.',
    'face-ring': 'Se serre au couple.',
    'cutting-edge': 'Se serre au couple.',
    'cone-24': 'Se serre d’une fraction de tour à partir du point dur.',
    'cone-24-hose': 'Se serre d’une fraction de tour à partir du point dur, ou au couple.',
    'cone-swivel': 'Se serre au couple.',
    npsm: 'Se serre au couple.',
    'taper-iso': 'Se serre en tours au-delà du serrage à la main.',
    'taper-npt': 'Se serre en tours au-delà du serrage à la main.',
    'taper-metric': 'Se serre en tours au-delà du serrage à la main.',
    'test-point': 'Se serre à la main.',
    washer: 'Se serre au couple.',
    dryseal: 'Se serre en tours au-delà du serrage à la main.',
    compression: 'Se serre d’une fraction de tour à partir du serrage à la main.',
    gauge: 'Se serre au couple, par les plats du manomètre et jamais par son boîtier.',
    flange: 'Se serre au couple, en croix.',
  },
  always: {
    pressure: 'Ne serrez jamais un raccord sous pression.',
    spanner: 'Retenez le corps avec une seconde clé : ni tube ni flexible ne doit se vriller.',
    ring: 'Montez chaque fois un joint torique ou une bague neufs.',
    leak: 'Ne serrez pas davantage pour arrêter une fuite : démontez, et regardez les sièges.',
  },
  steps: {
    'face-seal': [
      'Nettoyez les deux faces. Posez un joint neuf dans sa gorge, légèrement huilé, sans le vriller.',
      'Amenez la douille plane contre la face, bien alignée, et vissez l’écrou à la main.',
      'Retenez le corps avec une seconde clé et serrez au couple du fabricant.',
    ],
    flare: [
      'Vérifiez évasement et cône : ni rayure ni fissure, un anneau de contact complet.',
      'Huilez filets et cône, et vissez l’écrou à la main jusqu’au contact des sièges.',
      'Retenez le corps et serrez selon les pans à partir du serrage à la main, ou au couple, du fabricant.',
    ],
    inverted: [
      'Vérifiez l’évasement du tube et le cône au fond de l’orifice ; coupez un évasement marqué et refaites-le.',
      'Alignez le tube et vissez l’écrou à la main jusqu’au contact.',
      'Serrez de la fraction de tour du fabricant.',
    ],
    'stud-o-ring': [
      'Examinez le chanfrein de l’orifice. Huilez un joint neuf et passez-le sur le filet avec une douille.',
      'Extrémité fixe : vissez à la main jusqu’à l’épaulement, puis serrez au couple du fabricant.',
      'Extrémité orientable : reculez à fond le contre-écrou, rondelle en haut ; vissez à la main jusqu’à la rondelle, reculez d’un tour au plus pour orienter, tenez, et serrez le contre-écrou au couple du fabricant.',
    ],
    'face-ring': [
      'Nettoyez la face autour de l’orifice ; aucune rayure ne doit la traverser.',
      'Posez une bague neuve, huilez-la, et vissez à la main d’équerre à la face.',
      'Serrez au couple du fabricant.',
    ],
    'cutting-edge': [
      'Nettoyez la face autour de l’orifice et regardez la trace d’une arête précédente.',
      'Vissez à la main d’équerre à la face.',
      'Serrez au couple du fabricant.',
    ],
    'cone-24': [
      'Sciez le tube d’équerre, ébavurez-le légèrement dedans et dehors, nettoyez-le.',
      'Enfilez l’écrou, puis la bague coupante, l’arête vers l’extrémité du tube. Huilez filets, bague et cône.',
      'Tenez le tube en butée dans le cône (une bague neuve d’abord dans un corps trempé) et vissez l’écrou à la main jusqu’au point dur.',
      'Repérez écrou et tube, et serrez à partir de ce point dur de la fraction de tour du fabricant, le tube restant en butée.',
      'Démontez et cherchez un bourrelet complet devant l’arête de la bague ; elle peut tourner sur le tube, non glisser.',
      'Remontez jusqu’au repère, puis de la petite fraction de tour du fabricant.',
    ],
    'cone-24-hose': [
      'Nettoyez les deux cônes. Posez un joint neuf, huilé, dans la gorge du cône.',
      'Présentez le cône bien aligné, sans vriller le flexible, et vissez l’écrou à la main jusqu’au point dur.',
      'Retenez le corps et serrez à partir de là de la fraction de tour du fabricant.',
    ],
    'cone-swivel': [
      'Vérifiez les deux cônes : pas de rayure, un anneau de contact complet ; un cône à gorge reçoit un joint neuf.',
      'Réunissez-les bien alignés et vissez l’écrou à la main.',
      'Retenez le corps et serrez au couple du fabricant.',
    ],
    npsm: [
      'Regardez dans le mâle NPT : il lui faut un siège intérieur de 60°. Vérifiez les deux sièges.',
      'Réunissez-les bien alignés et vissez l’écrou à la main, sans produit d’étanchéité.',
      'Retenez le corps et serrez au couple du fabricant.',
    ],
    'taper-iso': [
      'Nettoyez les deux filets. Produit d’étanchéité sur le mâle, premier filet libre.',
      'Vissez à la main, puis à la clé, d’ordinaire un tour et demi à trois tours de plus (usage courant ; moins pour les grandes tailles).',
      'Ne revenez jamais en arrière pour orienter : cela fuirait.',
    ],
    'taper-npt': [
      'Nettoyez les deux filets. Produit d’étanchéité sur le mâle, premier filet libre.',
      'Vissez à la main, puis à la clé, d’ordinaire un tour et demi à trois tours de plus (usage courant ; moins pour les grandes tailles).',
      'Ne revenez jamais en arrière pour orienter : cela fuirait.',
    ],
    'taper-metric': [
      'Nettoyez les deux filets. Produit d’étanchéité sur le mâle, premier filet libre.',
      'Vissez à la main, puis à la clé sans dépasser ce que dit le fabricant : ces filetages sont courts.',
      'Ne revenez jamais en arrière pour orienter : cela fuirait.',
    ],
    'test-point': [
      'Faites d’abord tomber la pression partout où c’est possible : le clapet s’ouvre pendant qu’on visse l’écrou.',
      'Essuyez les deux extrémités et vissez l’écrou à la main jusqu’en butée, sans clé.',
      'Remettez ensuite le capuchon : il garde le clapet de la saleté.',
    ],
    washer: [
      'Nettoyez la face autour de l’orifice ; aucune rayure ne doit la traverser.',
      'Posez une rondelle neuve, de la taille et de la matière que dit le fabricant, et vissez à la main d’équerre à la face.',
      'Serrez au couple du fabricant.',
    ],
    dryseal: [
      'Nettoyez les deux filets, lubrifiez le mâle ; produit d’étanchéité seulement si le fabricant le demande.',
      'Vissez à la main, puis à la clé, d’ordinaire un tour et demi à trois tours de plus (usage courant ; moins pour les grandes tailles).',
      'Ne revenez jamais en arrière pour orienter : cela fuirait.',
    ],
    compression: [
      'Coupez le tube d’équerre et ébavurez-le. Enfilez l’écrou, puis l’olive.',
      'Poussez le tube en butée et vissez l’écrou à la main.',
      'Serrez de la fraction de tour du fabricant à partir du serrage à la main.',
    ],
    gauge: [
      'Posez une rondelle neuve au fond de l’orifice.',
      'Vissez le manomètre à la main.',
      'Serrez par ses plats au couple du fabricant.',
    ],
    flange: [
      'Nettoyez les deux faces et posez un joint neuf dans sa gorge, légèrement huilé.',
      'Placez à la main les deux demi-brides et les quatre vis, jeu égal partout.',
      'Serrez en croix, par étapes, au couple du fabricant, avec des vis de la classe demandée.',
    ],
  },
  assemblyOf: {
    'cone-24': 'Tube avec bague coupante',
    'cone-24-hose': 'Embout de flexible à cône et joint torique',
  },
  fluids: {
    mineral: 'Huile minérale (HL, HM, HV)',
    emulsion: 'Émulsions d’huile et d’eau (HFAE, HFB)',
    solution: 'Solutions aqueuses (HFAS)',
    glycol: 'Eau-glycol (HFC)',
    'phosphate-aryl': 'Ester phosphorique, aryle (HFDR)',
    'phosphate-alkyl': 'Ester phosphorique, alkyle (aéronautique)',
    'ester-fire': 'Ester de polyol, difficilement inflammable (HFDU)',
    vegetable: 'Ester végétal (HETG)',
    ester: 'Ester synthétique (HEES)',
    polyglycol: 'Polyglycol (HEPG)',
    hydrocarbon: 'Polyalphaoléfine (HEPR)',
    brake: 'Liquide de frein au glycol (ISO 4925)',
  },
  temperature: 'Température du fluide',
  temperatureNote: 'Limites d’usage en huile minérale ; les mélanges diffèrent.',
  epdm: 'L’EPDM ne rencontre jamais d’huile minérale, pas même en graisse.',
  off: {
    title: 'D’où vient la pièce ?',
    lead: 'Laissé vide, cela ne compte pas. Cela peut faire pencher, jamais déterminer seul.',
    region: 'Région',
    regions: {
      anywhere: 'indifférente',
      'north-america': 'Amérique du Nord',
      europe: 'Europe',
      'east-asia': 'Asie de l’Est',
    },
    trade: 'Genre de machine',
    trades: {
      any: 'indifférent',
      'mobile-hydraulics': 'hydraulique mobile ou industrielle',
      automotive: 'véhicule : freins, carburant, refroidissement',
    },
  },
  turns: { count: 'Filets', over: 'sur une longueur de' },
  cone: { wide: 'Grand diamètre', narrow: 'Petit diamètre', over: 'Longueur entre les deux' },
  cones: {
    24: '24° d’angle total',
    60: '60° d’angle total',
    30: '30° à l’axe',
    37: '37° à l’axe',
    45: '45° à l’axe',
    none: 'aucune lame ne porte',
  },
  marks: {
    none: 'aucune marque',
    'left-hand': 'LH, ou encoches sur l’hexagone',
    light: 'L (série légère)',
    heavy: 'S (série lourde)',
    nptf: 'NPTF',
  },
  crests: {
    rounded: 'Crêtes et fonds arrondis (55°)',
    flat: 'Crêtes coupées à plat (60°)',
  },
  hands: {
    right: 'Se visse dans le sens horaire',
    left: 'Se visse dans le sens antihoraire',
  },
  endPictures: {
    fixed: 'Rien ne tourne : filetage et corps d’une pièce',
    'swivel-nut': 'Un écrou qui tourne sur un embout ou un corps',
    'tube-nut': 'Un écrou libre qui coulisse sur un tube',
    stud: 'Un mâle qui se visse dans un bloc, étanche à l’épaulement ou au filet',
    port: 'Un trou taraudé dans un bloc ou un corps',
    'flange-head': 'Une tête plate sans filetage, tenue par des brides',
  },
  kinds: {
    'turns-over': {
      name: 'Filets sur une longueur',
      title: 'Comptez les filets à la règle',
      how: 'Posez une règle le long du filetage. Depuis une crête, comptez dix filets (ou ce qu’il y a) et lisez la longueur.',
    },
    'end-type': {
      name: 'Genre d’extrémité',
      title: 'Quelle extrémité est-ce ?',
      how: 'Qu’est-ce qui tourne, et dans quoi se visse-t-elle ?',
    },
    'seat-gauge': {
      name: 'Gabarit de siège',
      title: 'Essayez un gabarit de siège (lames)',
      how: 'Présentez les lames contre le cône, dans l’axe, à contre-jour. 30°, 37° et 45° se ressemblent à l’œil.',
    },
    'cone-size': {
      name: 'Cône au pied à coulisse',
      title: 'Mesurez le cône',
      how: 'Le grand diamètre, le petit, et la longueur entre les deux le long de l’axe (jauge de profondeur ou réglet). L’angle en découle.',
    },
    'nose-od': {
      name: 'Diamètre du nez',
      title: 'Mesurez le nez',
      how: 'En travers du petit diamètre du cône qui dépasse dans l’écrou, à sa pointe. Pied à coulisse ou règle. Sur un flexible, il remplace le tube.',
    },
    'crest-form': {
      name: 'Forme des crêtes',
      title: 'Crêtes rondes ou plates ?',
      how: 'Regardez le long des crêtes à la loupe, là où elles ne sont pas usées.',
    },
    'flange-thickness': {
      name: 'Épaisseur de la tête',
      title: 'Mesurez la tête de bride',
      how: 'Quelle est l’épaisseur du bord tenu par les demi-brides ? Pied à coulisse ou règle.',
    },
    'bolt-spacing': {
      name: 'Entraxe des vis',
      title: 'Mesurez entre les vis',
      how: 'De centre à centre de deux vis, dans le sens long. Mesurez d’un bord au même bord.',
    },
    marking: {
      name: 'Marque',
      title: 'Cherchez une marque',
      how: 'Lettres frappées, ou petites encoches sur les arêtes de l’hexagone.',
    },
    hand: {
      name: 'Sens',
      title: 'Dans quel sens se visse-t-il ?',
      how: 'Tenez le filetage debout : à droite, les filets montent vers la droite.',
    },
    hex: {
      name: 'Hexagone',
      title: 'Mesurez sur plats',
      how: 'Indice faible : un filetage existe sur plusieurs hexagones. Pied à coulisse ou règle sur deux plats.',
    },
  },
  femaleHow: {
    'pitch-gauge':
      'Femelle : présentez les lames dans l’alésage, dans l’axe. Si elles n’y entrent pas, vissez une pièce mâle connue.',
    'turns-over':
      'Femelle : pressez-y de la pâte ou du papier souple, retirez, et comptez les nervures.',
    taper:
      'Femelle : vissez-y un mâle cylindrique (tampon). Dans un conique il serre après quelques filets ; dans un cylindrique il va jusqu’au fond.',
    flank: 'Femelle : présentez le gabarit dans l’alésage, ou prenez une empreinte.',
    'crest-form': 'Femelle : regardez les crêtes à l’entrée, à la loupe et à la lampe.',
    'tube-od': 'Diamètre extérieur du tube qui porte l’écrou.',
    'seat-gauge': 'Femelle : présentez la lame dans le siège, ou contre le cône dans l’écrou.',
    seat: 'Quel dessin ressemble à l’intérieur de cette extrémité ? Le trait fort marque l’étanchéité.',
  },
  familyNotes: notesFr,
};
