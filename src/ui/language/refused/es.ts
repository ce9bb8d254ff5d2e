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
  cornerMarks: {
    what: 'Las cuatro esquinas mostradas no dan ninguna escala.',
    todo: 'Ponga cada marca donde se juntan dos lados y diga qué es. Si ya están ahí, repita la foto junto a una tarjeta bancaria o sobre la tarjeta impresa, o introduzca medidas.',
  },
  axisMarks: {
    what: 'Donde se ha mostrado la rosca no se puede medir ninguna.',
    todo: 'Ponga A en el extremo libre y B en la última vuelta completa, ambas en el centro de la rosca. Si ya están ahí, la foto no muestra lo bastante: acérquese, con luz de lado, o introduzca medidas.',
  },
  brightOnLight:
    'Sobre fondo claro una pieza brillante o cincada se pierde: el campo oscuro de la tarjeta la muestra mejor.',
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
      todo: 'Ponga el racor plano, con la rosca libre y toda a la vista, con luz de lado y sin reflejos; o muestre a mano dónde está la rosca.',
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
      todo: 'Envíe la foto a tamaño completo y no una vista previa, o acérquese mientras el anillo siga a la vista.',
    },
    'cut-off': {
      what: 'Una parte queda fuera de la foto o de la ventana.',
      todo: 'Se ha encontrado la tarjeta, pero no toda la rosca: ponga el racor en medio de la ventana y mantenga todo el anillo a la vista.',
    },
    'several-fittings': {
      what: 'Hay más de un racor en la ventana.',
      todo: 'Deje un solo racor y repita la foto, o muestre a mano cuál es.',
    },
    'card-mirrored': {
      what: 'La tarjeta se ve en espejo.',
      todo: 'Fotografíe directamente, sin espejo ni vista de autorretrato.',
    },
    unreadable: {
      what: 'Este archivo no se puede leer como foto.',
      todo: 'Elija la foto original: JPEG, PNG, WebP, HEIC o AVIF. Si llegó por correo o mensajería, pida que la envíen otra vez.',
    },
    'unsupported-format': {
      what: 'Este tipo de archivo no se puede abrir aquí.',
      todo: 'Compártalo o guárdelo como foto (JPEG, PNG, WebP, HEIC o AVIF) y elija esa.',
    },
    'decoder-missing': {
      what: 'Esta foto necesita una parte de la página que aún no está cargada.',
      todo: 'Conéctese a la red y mida de nuevo: esa parte queda después en el dispositivo. O comparta la foto como JPEG.',
    },
    'too-large': {
      what: 'La foto es demasiado grande para este dispositivo.',
      todo: 'Elija un tamaño menor, por ejemplo 12 megapíxeles.',
    },
  },
  other: { what: 'La foto no se ha podido medir.', todo: 'Pruebe con otra foto.' },
  detail: 'En detalle',
};
