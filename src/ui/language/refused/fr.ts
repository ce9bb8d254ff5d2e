import type { Widen } from '../widen';
import type { RefusedWords } from './en';

export const refusedFr: Widen<RefusedWords> = {
  title: 'Non mesuré',
  retry: 'Une autre photo',
  retake: 'Reprendre la photo',
  byHand: 'Montrer à la main',
  byRule: 'Utiliser une règle',
  readings: 'Saisir plutôt des relevés',
  ruleMarks: {
    what: 'Les deux marques ne donnent pas d’échelle.',
    todo: 'Placez-les sur deux graduations éloignées dans la photo, et vérifiez la distance et son unité.',
  },
  cornerMarks: {
    what: 'Les quatre coins montrés ne donnent pas d’échelle.',
    todo: 'Placez chaque marque là où deux côtés se rejoignent et dites ce que c’est. Si elles y sont déjà, reprenez la photo à côté d’une carte bancaire ou sur la carte imprimée, ou saisissez des relevés.',
  },
  axisMarks: {
    what: 'Là où le filetage a été montré, rien ne peut être mesuré.',
    todo: 'Placez A à l’extrémité libre et B au dernier filet complet, tous deux au milieu du filetage. S’ils y sont déjà, la photo n’en montre pas assez : approchez-vous, avec une lumière de côté, ou saisissez des relevés.',
  },
  brightOnLight:
    'Sur fond clair, une pièce brillante ou zinguée s’efface : le champ sombre de la carte la montre mieux.',
  reasons: {
    'no-card': {
      what: 'Aucune carte étalon trouvée.',
      todo: 'Posez le raccord sur la carte imprimée, à côté d’une carte bancaire ou sur une feuille vierge, et gardez-la entière dans l’image ; ou montrez-la à la main.',
    },
    'business-card': {
      what: 'C’est la forme d’une carte de visite.',
      todo: 'Les cartes de visite ont bien des formats. Prenez une carte bancaire ou de bibliothèque, une feuille A4 ou Letter vierge, ou la carte imprimée.',
    },
    banknote: {
      what: 'C’est la forme d’un billet de banque.',
      todo: 'Les billets sont coupés trop librement pour mesurer. Prenez une carte bancaire ou de bibliothèque, une feuille A4 ou Letter vierge, ou la carte imprimée.',
    },
    'other-rectangle': {
      what: 'Cette carte ou cette feuille n’a pas un format connu.',
      todo: 'Prenez une carte bancaire ou de bibliothèque, une feuille A4 ou Letter vierge, ou la carte imprimée.',
    },
    'which-reference': {
      what: 'Il n’est pas sûr de quelle carte ou feuille il s’agit.',
      todo: 'Dites ce que c’est, et la mesure est refaite.',
    },
    'no-thread': {
      what: 'L’échelle a été trouvée, mais aucun filetage.',
      todo: 'Posez le raccord à plat, filetage dégagé et entièrement visible, avec une lumière de côté et sans reflet ; ou montrez à la main où est le filetage.',
    },
    'too-few-turns': {
      what: 'On voit trop peu de filets.',
      todo: 'Montrez au moins quatre filets : ôtez écrous et bouchons, tournez le filetage vers le milieu.',
    },
    'too-blurred': {
      what: 'La photo n’est pas nette.',
      todo: 'Tenez sans bouger ou appuyez les coudes, ajoutez de la lumière, touchez le filetage pour faire le point.',
    },
    'too-coarse': {
      what: 'Le filetage a trop peu de pixels.',
      todo: 'Envoyez la photo en taille réelle plutôt qu’un aperçu, ou approchez-vous tant que l’anneau reste visible.',
    },
    'cut-off': {
      what: 'Une partie se trouve hors de la photo ou de la fenêtre.',
      todo: 'La carte a été trouvée, mais pas tout le filetage : posez le raccord au milieu de la fenêtre et gardez tout l’anneau dans l’image.',
    },
    'several-fittings': {
      what: 'Il y a plus d’un raccord dans la fenêtre.',
      todo: 'Laissez un seul raccord et reprenez la photo, ou montrez à la main lequel est voulu.',
    },
    'card-mirrored': {
      what: 'La carte apparaît en miroir.',
      todo: 'Photographiez directement, sans miroir ni aperçu d’autoportrait.',
    },
    unreadable: {
      what: 'Ce fichier ne peut être lu comme une photo.',
      todo: 'Choisissez la photo d’origine : JPEG, PNG, WebP, HEIC ou AVIF. Si elle est venue par courriel ou messagerie, faites-la renvoyer.',
    },
    'unsupported-format': {
      what: 'Ce genre de fichier ne peut pas être ouvert ici.',
      todo: 'Partagez-le ou enregistrez-le comme photo (JPEG, PNG, WebP, HEIC ou AVIF) et choisissez celle-ci.',
    },
    'decoder-missing': {
      what: 'Cette photo demande une partie de la page qui n’est pas encore chargée.',
      todo: 'Connectez-vous au réseau et mesurez de nouveau : cette partie reste ensuite sur l’appareil. Ou partagez la photo en JPEG.',
    },
    'too-large': {
      what: 'La photo est trop grande pour cet appareil.',
      todo: 'Choisissez une taille plus petite, par exemple 12 mégapixels.',
    },
  },
  other: { what: 'La photo n’a pas pu être mesurée.', todo: 'Essayez une autre photo.' },
  detail: 'En détail',
};
