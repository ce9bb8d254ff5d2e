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
      todo: 'Posez le raccord à plat dans la fenêtre, filetage dégagé ; s’il se voit à peine, prenez l’autre champ de la carte (clair ou sombre).',
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
      todo: 'Envoyez la photo en pleine taille, ou approchez-vous tant que l’anneau reste dans l’image.',
    },
    'cut-off': {
      what: 'Le filetage sort de l’image ou de la fenêtre.',
      todo: 'Déplacez le raccord pour que tout le filetage soit dans la fenêtre.',
    },
    'several-fittings': {
      what: 'Il y a plus d’un raccord dans la fenêtre.',
      todo: 'Laissez un seul raccord sur la carte et reprenez la photo.',
    },
    'card-mirrored': {
      what: 'La carte apparaît en miroir.',
      todo: 'Photographiez directement, sans miroir ni aperçu d’autoportrait.',
    },
    unreadable: {
      what: 'Ce fichier ne peut être lu comme une photo.',
      todo: 'Choisissez la photo d’origine en JPEG, PNG ou WebP.',
    },
    'unsupported-format': {
      what: 'Ce navigateur ne peut ouvrir ce genre de photo.',
      todo: 'Sur le téléphone, réglez l’appareil photo sur « le plus compatible » (JPEG), ou partagez la photo en JPEG.',
    },
    'too-large': {
      what: 'La photo est trop grande pour cet appareil.',
      todo: 'Choisissez une taille plus petite, par exemple 12 mégapixels.',
    },
  },
  other: { what: 'La photo n’a pas pu être mesurée.', todo: 'Essayez une autre photo.' },
  detail: 'En détail',
};
