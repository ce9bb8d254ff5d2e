import type { AssemblyWords } from './en';

export const assemblyFr: AssemblyWords = {
  ends: { male: 'mâle', female: 'femelle' },
  endTypes: {
    fixed: 'extrémité fixe',
    'swivel-nut': 'écrou tournant',
    stud: 'embout à visser',
    port: 'orifice',
    'tube-nut': 'vis de tube',
    'flange-head': 'tête de bride',
  },
  endRow: 'Extrémité',
  form: 'Forme',
  formOpen: 'à voir : bague ou arête d’étanchéité',
  leftHand:
    'Filetage à gauche (LH). Il se serre dans le sens inverse des aiguilles ; aucune pièce à droite ne va. Commandez-le LH, ne forcez jamais une pièce à droite.',
  nptf: 'NPT et NPTF ne se distinguent pas par la mesure. Voyez le marquage ou le plan de la pièce avant de choisir.',
  tapers:
    'Un mâle conique va dans Rp (cylindrique) ou Rc (conique) de l’ISO 7-1, jamais dans un orifice G.',
  lookAlikes: 'Se ressemblent, ne jamais forcer',
  alsoUses: 'Aussi sur ce filetage, hors de ces tables',
  inMating: 'dans le mâle en regard',
  byForm: 'selon la forme, voir les données du fabricant',
  grooves:
    'Les gorges sont simples ou retenantes (resserrées à l’ouverture) : le joint a la même taille.',
  sealings: {
    'face-seal': 'joint torique dans la face plane du mâle',
    flare: 'métal sur métal, cône dans évasement',
    inverted: 'métal sur métal, tube évasé sur le cône au fond de l’orifice',
    'stud-o-ring': 'joint torique sous l’hexagone, dans le chanfrein de l’orifice',
    'stud-retained-ring':
      'joint torique dans sa bague de retenue, sur la face plane autour de l’orifice',
    'face-ring': 'bague ou arête sur la face plane autour de l’orifice',
    'cone-24': 'bague coupante, ou joint torique d’un cône, dans le cône de 24°',
    'cone-24-hose': 'cône à joint torique, ou bague coupante sur tube, dans le cône de 24°',
    'cone-swivel': 'métal sur métal, cône dans cône',
    taper: 'filet dans filet, avec produit d’étanchéité',
    flange: 'joint torique dans la face plane de la tête de bride',
  },
  mates: {
    'face-seal': {
      male: 'écrou tournant avec douille plane de même taille',
      female: 'mâle de même taille, joint torique dans la face',
    },
    flare: {
      male: 'écrou tournant de même angle et de même taille, sur tube évasé ou flexible',
      female: 'mâle à cône extérieur de même angle et de même taille',
    },
    inverted: {
      male: 'orifice pour évasement inversé de même taille, tube évasé en conséquence',
      female: 'vis de tube de même taille sur tube évasé',
    },
    'stud-o-ring': {
      male: 'orifice de même filetage avec chanfrein pour le joint',
      female: 'embout à visser de même norme et de même taille, avec son joint torique',
    },
    'stud-retained-ring': {
      male: 'orifice de même filetage avec large face plane autour',
      female: 'embout à visser de même norme et de même taille, à bague ou à arête',
    },
    'face-ring': {
      male: 'orifice de même filetage avec face plane usinée autour',
      female: 'embout à visser de même norme et de même taille, à bague ou à arête',
    },
    'cone-24': {
      male: 'écrou de la même série (L ou S) avec bague coupante et tube, ou embout de flexible à cône de 24°',
      female: 'mâle de la même série (L ou S) et de même taille à cône intérieur de 24°',
    },
    'cone-24-hose': {
      male: 'écrou de la même série (L ou S) avec bague coupante et tube, ou embout de flexible à cône de 24°',
      female: 'mâle de la même série (L ou S) et de même taille à cône intérieur de 24°',
    },
    'cone-swivel': {
      male: 'écrou tournant de même filetage et de même angle de siège',
      female: 'mâle de même filetage et de même angle de siège',
    },
    taper: {
      male: 'filetage femelle de la même norme',
      female: 'filetage mâle conique de la même norme',
    },
    flange: {
      male: 'plan à quatre vis et deux demi-brides de même code et de même taille',
      female: 'tête de bride de même code et de même taille, avec demi-brides',
    },
  },
  steps: {
    'face-seal': [
      'Nettoyez les deux faces. Posez un joint neuf dans sa gorge, légèrement huilé, sans le vriller.',
      'Amenez la douille plane contre la face, bien alignée, et vissez l’écrou à la main.',
      'Retenez le corps avec une seconde clé et serrez l’écrou au couple du fabricant.',
    ],
    flare: [
      'Vérifiez évasement et cône : ni rayure ni fissure, un anneau de contact complet.',
      'Huilez filets et cône, et vissez l’écrou à la main jusqu’au contact des sièges.',
      'Retenez le corps avec une seconde clé et serrez l’écrou selon les pans du fabricant à partir du serrage à la main, ou au couple.',
      'En cas de fuite, ne serrez pas davantage pour l’arrêter : faites tomber la pression et regardez les sièges.',
    ],
    inverted: [
      'Vérifiez l’évasement du tube et le cône au fond ; un évasement marqué se coupe et se refait.',
      'Poussez le tube bien droit sur le cône et vissez la vis de tube à la main.',
      'Retenez le corps et serrez de l’angle ou au couple du fabricant ; le tube ne doit pas tourner.',
    ],
    'stud-o-ring': [
      'Examinez le chanfrein de l’orifice. Huilez un joint neuf et passez-le sur le filet avec une douille.',
      'Embout fixe : vissez à la main jusqu’à l’hexagone, puis serrez au couple du fabricant.',
      'Embout orientable : reculez à fond le contre-écrou, rondelle en haut ; vissez à la main jusqu’à la rondelle ; reculez d’un tour au plus pour orienter.',
      'Tenez ainsi avec une seconde clé et serrez le contre-écrou au couple du fabricant.',
    ],
    'stud-retained-ring': [
      'Nettoyez la face autour de l’orifice ; aucune rayure ne doit la traverser. Posez un joint torique neuf dans sa bague de retenue, légèrement huilé.',
      'Embout fixe (forme G) : vissez à la main jusqu’à la bague, puis serrez au couple du fabricant.',
      'Embout orientable (forme H) : reculez le contre-écrou, vissez jusqu’à la bague, reculez d’un tour au plus pour orienter, retenez avec une seconde clé et serrez le contre-écrou au couple du fabricant.',
    ],
    'face-ring': [
      'Nettoyez la face autour de l’orifice ; aucune rayure ne doit la traverser.',
      'Posez une bague neuve (si cette forme en a une), huilez-la, et vissez à la main d’équerre à la face.',
      'Serrez au couple du fabricant.',
    ],
    'cone-24': [
      'Coupez le tube d’équerre et ébavurez-le. Enfilez l’écrou, puis la bague coupante, arête vers l’extrémité du tube.',
      'Huilez filet, cône et bague. Une bague neuve se pré-monte de préférence dans un outil trempé.',
      'Poussez le tube à fond en butée, tenez-le, et vissez l’écrou jusqu’au point dur. Marquez écrou et tube.',
      'Retenez le corps avec une seconde clé et tournez l’écrou de l’angle du fabricant à partir du point dur.',
      'Démontez et regardez : un bourrelet complet doit se dresser devant l’arête. La bague peut tourner, mais non glisser.',
      'Remontez jusqu’au repère, puis du petit angle du fabricant au-delà.',
    ],
    'cone-24-hose': [
      'Vérifiez les deux cônes. Posez un joint torique neuf dans la gorge du cône, légèrement huilé. (Un tube à bague coupante se pré-monte d’abord.)',
      'Réunissez les extrémités bien alignées et vissez l’écrou à la main jusqu’au point dur.',
      'Retenez le corps avec une seconde clé et tournez l’écrou de l’angle du fabricant à partir du point dur ; le flexible ne doit pas vriller.',
    ],
    'cone-swivel': [
      'Vérifiez les deux cônes : pas de rayure, un anneau de contact complet ; si le cône porte un joint torique, posez-en un neuf.',
      'Réunissez-les bien alignés et vissez l’écrou à la main.',
      'Retenez le corps avec une seconde clé et serrez au couple du fabricant.',
    ],
    taper: [
      'Nettoyez les deux filets. Produit d’étanchéité sur le mâle, premier filet libre ; les filets étanches à sec reçoivent un lubrifiant si aucun produit n’est demandé.',
      'Vissez à la main, puis à la clé, d’ordinaire un tour et demi à trois tours après le serrage à la main (usage courant).',
      'Ne revenez jamais en arrière pour orienter : cela fuirait. Jamais dans un orifice G, ni dans un autre orifice cylindrique qui n’est pas Rp.',
    ],
    flange: [
      'Nettoyez les deux faces et posez un joint neuf dans sa gorge, légèrement huilé.',
      'Placez à la main les deux demi-brides et les quatre vis, jeu égal partout.',
      'Serrez en croix par étapes au couple du fabricant, avec des vis de la classe demandée.',
    ],
  },
};
