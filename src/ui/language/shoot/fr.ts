import type { Widen } from '../widen';
import type { ShootWords } from './en';

export const shootFr: Widen<ShootWords> = {
  title: 'Prise guidée',
  again: 'Réessayer l’appareil photo',
  taking: 'Prise en cours',
  contrastOnDark: 'Filetage peu visible : éclairez de côté',
  noCamera: 'Aucun appareil photo utilisable ici. Prenez la photo avec le bouton ci-dessous.',
  denied:
    'L’appareil photo n’a pas été autorisé. Autorisez-le dans le navigateur, ou prenez la photo avec le bouton ci-dessous.',
  noGuide: 'Pas de guidage sur cet appareil : déclenchez quand tout l’anneau est dans l’image.',
  hold: 'Ne bougez plus',
  shot: 'Prise',
  byHand: 'Déclencher',
  auto: 'Déclencher seul quand tout va bien',
  torch: 'Lampe',
  full: 'Photo en pleine résolution',
  viewfinder: 'Ce que voit l’appareil photo',
  checks: {
    card: 'Carte dans l’image',
    tilt: 'Assez d’aplomb',
    distance: 'Assez loin',
    light: 'Assez de lumière',
    still: 'Immobile',
    contrast: 'Le filetage se détache',
    inside: 'Raccord dans la fenêtre',
  },
  hints: {
    card: 'Cadrez tout l’anneau de repères',
    tilt: 'Tenez le téléphone plus à plat',
    distance: 'Un peu plus loin',
    light: 'Plus de lumière',
    still: 'Ne bougez plus',
    contrast: 'Filetage peu visible : éclairez de côté, ou prenez le champ sombre',
    inside: 'Placez le raccord dans la fenêtre',
    loading: 'Le guidage se charge',
  },
  good: 'bien',
  bad: 'pas encore',
};
