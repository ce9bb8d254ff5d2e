/** The family notes of the tables, by their keys. */
export const notesEs: Readonly<Record<string, string>> = {
  'iso-8434-3.know': 'El extremo macho es plano y lleva una junta tórica en una ranura de la cara.',
  'iso-8434-3.ring':
    'La junta es de dureza 90: una más blanda del mismo tamaño se sale de la ranura.',
  'iso-8434-3.mate':
    'Se une con un casquillo plano bajo una tuerca del mismo tamaño dash, en tubo o manguera.',
  'iso-8434-3.mistaken':
    'Los tamaños -4 y -12 tienen la rosca del abocardado 37° y del extremo con junta tórica: mire la cara.',
  'iso-8434-2.know':
    'El extremo macho acaba en un cono de 37° con su eje; el tubo se abocarda al mismo ángulo.',
  'iso-8434-2.mistaken':
    'Los tamaños -2 a -5, -8 y -10 tienen la rosca del abocardado 45°: ponga una galga de asiento en el cono.',
  'iso-8434-2.mix':
    'Piezas de 37° y 45° se enroscan y se tocan solo en una línea: fugan y se agrietan.',
  'sae-j512.know':
    'El extremo macho acaba en un cono de 45° con su eje. Casi siempre latón, baja presión.',
  'sae-j512.mix': 'No sustituye a un abocardado 37°, aunque varios tamaños tengan la misma rosca.',
  'sae-j512-inverted.know':
    'El macho es una tuerca que aprieta el tubo abocardado contra un cono que sobresale al fondo del orificio.',
  'sae-j512-inverted.mate':
    'Abocardado, tuerca y orificio van juntos: cambie el extremo del tubo si su abocardado está marcado.',
  'sae-j512-compression.know':
    'Una tuerca aprieta un bicono de latón sobre un tubo liso; el cuerpo se abre en chaflán para él.',
  'sae-j512-compression.mistaken':
    'Es de baja presión: no sustituye a un anillo cortante ni a un abocardado.',
  'nf-e-48-050.know':
    'El cono de 24° de ISO 8434-1, para tubos de las antiguas medidas de gas y siempre con paso de 1,5 mm.',
  'nf-e-48-050.mistaken':
    'M20x1,5 y M24x1,5 son también de la serie pesada de ISO 8434-1: mida el taladro del tubo.',
  'iso-4038.know':
    'Una tuerca en una tubería de freno abocardada; el asiento está al fondo del orificio.',
  'iso-4038.mistaken':
    'Dos abocardados comparten la tuerca, el doble y el de burbuja: el tubo debe corresponder al orificio.',
  'en-837-1.know':
    'Rosca cilíndrica con un pivote corto en la punta; una arandela sella al fondo del orificio.',
  'en-837-1.npt': 'Hay manómetros también con rosca NPT, que sella en la rosca.',
  'din-3852-1.know':
    'Rosca métrica de 60°, cónica 1:16; sobre todo en líneas de engrase y de baja presión.',
  'din-3852-1.mate':
    'Sella en un agujero métrico cilíndrico hecho para ella (forma Z), con sellador; un orificio de cara plana no lo es.',
  'iso-15171.know':
    'Un macho bajo una tapa, con una válvula dentro que se abre al enroscar la manguera de medición.',
  'iso-15171.mistaken':
    'Otras tomas de presión se parecen y tienen otras roscas o pasos: nunca fuerce una manguera de medición.',
  'iso-11926.know':
    'Rosca UN cilíndrica con junta tórica entre rosca y hexágono; el orificio tiene un chaflán para la junta.',
  'iso-11926.adjustable':
    'Los extremos orientables llevan arandela y contratuerca sobre la junta; sellan solo con la tuerca apretada.',
  'iso-11926.mistaken':
    'Las roscas son las del abocardado 37°: este extremo no tiene cono, y un abocardado no tiene junta en el hexágono.',
  'iso-6149.know':
    'Como el de pulgadas, con rosca métrica; un anillo en relieve en torno a la boca marca el orificio.',
  'iso-6149.mistaken':
    'Un orificio ISO 9974 tiene la misma rosca pero no el chaflán: los dos no sellan entre sí.',
  'iso-9974.know':
    'El hombro sella en una cara mecanizada: con anillo blando (forma E), arista (forma B) o arandela suelta (forma A).',
  'iso-9974.ring':
    'Una arista de forma B marca cada vez una línea nueva: revise la cara antes de volver a usarla.',
  'iso-1179.know':
    'Rosca de tubo cilíndrica; el hombro sella con anillo blando (forma E), junta tórica con anillo de apoyo (G, H), arista (B) o arandela suelta (A).',
  'iso-1179.mistaken':
    'La cónica R tiene el mismo paso y casi el mismo diámetro: la conicidad las distingue.',
  'iso-8434-1.know':
    'El extremo macho se abre en un cono de 24° de ángulo total, con un taladro a la medida del tubo detrás.',
  'iso-8434-1.series':
    'Las series ligera y pesada comparten roscas con tubos distintos: mida el tubo o su taladro.',
  'iso-8434-1.mate':
    'Admite anillo cortante, boquilla soldada con junta o terminal con cono de 24°, bajo una tuerca de la misma serie.',
  'iso-8434-6.know':
    'El extremo macho se abre en un cono de 60° de ángulo total; la boquilla bajo la tuerca lleva el cono exterior correspondiente.',
  'iso-8434-6.mistaken':
    'Un asiento de 30° JIS B 8363 sobresale en el macho; el cono de 60° se abre hacia dentro.',
  'din-7631.know':
    'El extremo macho se abre en un cono de 60° de ángulo total, rosca métrica de paso 1,5 mm.',
  'din-7631.mistaken':
    'Muchos tamaños tienen la rosca del cono de 24°: mire el ángulo y el taladro del tubo detrás.',
  'jis-b-8363.know': 'El asiento está a 30° del eje, hacia fuera en el macho.',
  'jis-b-8363.hollow':
    'Algunos machos de la misma norma tienen un asiento hueco: mire antes de unirlos.',
  'jis-b-8363.mistaken': 'Su ángulo se acerca al abocardado 37°; la rosca es de tubo o métrica.',
  'iso-7-1.know':
    'Un macho de 55°, cónico 1:16; sella en una hembra cónica (Rc) o cilíndrica (Rp), con sellador.',
  'iso-7-1.never-g':
    'Nunca va en un orificio G, que tiene la misma rosca pero no límites para sellar.',
  'iso-7-1.mistaken':
    'En 1/2 y 3/4 tiene el paso de NPT y casi el mismo diámetro: el ángulo es de 55°, no de 60°.',
  'asme-b1-20-1.know': 'Una rosca de 60°, cónica 1:16; sella en la rosca, con sellador.',
  'asme-b1-20-1.swivel':
    'Una tuerca loca NPSM sella en el chaflán de 60° dentro del macho NPT, no en su rosca.',
  'asme-b1-20-1.dryseal':
    'NPTF parece igual y solo difiere en el corte de crestas y fondos: vea las marcas de la pieza.',
  'sae-j476.know':
    'Crestas y fondos se tocan antes que los flancos. A la vista y al pie de rey es NPT.',
  'iso-6162.know':
    'Una boca redonda y plana con junta tórica en la cara, sujeta por dos medias bridas y cuatro tornillos.',
  'iso-6162.codes':
    'Las bocas de código 62 son más gruesas y anchas que las de código 61 de la misma manguera, y sus tornillos van en otro sitio.',
};
