import type { Widen } from '../widen';
import type { RefusedWords } from './en';

export const refusedEs: Widen<RefusedWords> = {
  title: 'Sin medir',
  retry: 'Otra foto',
  retake: 'Repetir la foto',
  byHand: 'Mostrar a mano',
  byRule: 'Usar una regla',
  readings: 'Introducir medidas en su lugar',
  ruleMarks: {
    what: 'Las dos marcas no dan ninguna escala.',
    todo: 'Póngalas en dos divisiones alejadas dentro de la foto, y compruebe la distancia y su unidad.',
  },
  reasons: {
    'no-card': {
      what: 'No se ha encontrado la tarjeta patrón.',
      todo: 'Ponga el racor sobre la tarjeta impresa, junto a una tarjeta bancaria o sobre una hoja en blanco, y manténgala entera a la vista; o muéstrela a mano.',
    },
    'business-card': {
      what: 'Tiene la forma de una tarjeta de visita.',
      todo: 'Las tarjetas de visita tienen muchos tamaños. Use una tarjeta bancaria o de biblioteca, una hoja A4 o Letter en blanco, o la tarjeta impresa.',
    },
    banknote: {
      what: 'Tiene la forma de un billete.',
      todo: 'Los billetes se cortan con demasiada holgura para medir. Use una tarjeta bancaria o de biblioteca, una hoja A4 o Letter en blanco, o la tarjeta impresa.',
    },
    'other-rectangle': {
      what: 'No se conoce el tamaño de esta tarjeta u hoja.',
      todo: 'Use una tarjeta bancaria o de biblioteca, una hoja A4 o Letter en blanco, o la tarjeta impresa.',
    },
    'which-reference': {
      what: 'No es seguro qué clase de tarjeta u hoja es.',
      todo: 'Diga qué es y se mide de nuevo.',
    },
    'no-thread': {
      what: 'Se ha encontrado la escala, pero ninguna rosca.',
      todo: 'Ponga el racor plano en la ventana con la rosca libre; si cuesta verla, use el otro campo de la tarjeta (claro u oscuro).',
    },
    'too-few-turns': {
      what: 'Se ven muy pocos hilos de la rosca.',
      todo: 'Muestre al menos cuatro hilos: quite tuercas y tapones, gire la rosca hacia el centro.',
    },
    'too-blurred': {
      what: 'La foto no está nítida.',
      todo: 'No se mueva o apoye los codos, añada luz, toque la rosca para enfocar.',
    },
    'too-coarse': {
      what: 'La rosca tiene muy pocos píxeles.',
      todo: 'Envíe la foto a tamaño completo, o acérquese mientras el anillo siga a la vista.',
    },
    'cut-off': {
      what: 'La rosca se sale de la imagen o de la ventana.',
      todo: 'Mueva el racor para que toda la rosca quede dentro de la ventana.',
    },
    'several-fittings': {
      what: 'Hay más de un racor en la ventana.',
      todo: 'Deje uno solo sobre la tarjeta y repita la foto.',
    },
    'card-mirrored': {
      what: 'La tarjeta se ve en espejo.',
      todo: 'Fotografíe directamente, sin espejo ni vista de autorretrato.',
    },
    unreadable: {
      what: 'Este archivo no se puede leer como foto.',
      todo: 'Elija la foto original en JPEG, PNG o WebP.',
    },
    'unsupported-format': {
      what: 'Este navegador no puede abrir este tipo de foto.',
      todo: 'En el teléfono, ponga la cámara en «más compatible» (JPEG), o comparta la foto como JPEG.',
    },
    'too-large': {
      what: 'La foto es demasiado grande para este dispositivo.',
      todo: 'Elija un tamaño menor, por ejemplo 12 megapíxeles.',
    },
  },
  other: { what: 'La foto no se ha podido medir.', todo: 'Pruebe con otra foto.' },
  detail: 'En detalle',
};
