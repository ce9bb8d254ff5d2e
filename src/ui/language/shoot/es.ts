import type { Widen } from '../widen';
import type { ShootWords } from './en';

export const shootEs: Widen<ShootWords> = {
  title: 'Cámara guiada',
  again: 'Probar la cámara otra vez',
  taking: 'Tomándola',
  contrastOnDark: 'La rosca se ve mal: ilumine de lado',
  noCamera: 'Aquí no se puede usar la cámara. Tome la foto con el botón de abajo.',
  denied:
    'La cámara no se ha permitido. Permítala en el navegador, o tome la foto con el botón de abajo.',
  noGuide: 'Sin guía en este dispositivo: dispare cuando todo el anillo esté a la vista.',
  hold: 'No se mueva',
  shot: 'Tomada',
  byHand: 'Disparar ahora',
  auto: 'Disparar sola cuando todo esté bien',
  torch: 'Linterna',
  full: 'Foto a plena resolución',
  viewfinder: 'Lo que ve la cámara',
  checks: {
    card: 'Tarjeta a la vista',
    tilt: 'Bastante desde arriba',
    distance: 'Bastante lejos',
    light: 'Luz suficiente',
    still: 'Sin mover',
    contrast: 'La rosca destaca',
    inside: 'Racor dentro de la ventana',
  },
  hints: {
    card: 'Encuadre todo el anillo de marcas',
    tilt: 'Sujete el teléfono más horizontal',
    distance: 'Un poco más lejos',
    light: 'Más luz',
    still: 'No se mueva',
    contrast: 'La rosca se ve mal: ilumine de lado o use el campo oscuro',
    inside: 'Lleve el racor a la ventana',
    loading: 'Se está cargando la guía',
  },
  good: 'bien',
  bad: 'aún no',
};
