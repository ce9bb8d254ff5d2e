/** The family notes of the tables, by their keys. */
export const notesFr: Readonly<Record<string, string>> = {
  'iso-8434-3.know':
    'L’extrémité mâle est plane et porte un joint torique dans une gorge de sa face.',
  'iso-8434-3.ring':
    'Le joint est de dureté 90 : un plus tendre de même taille est chassé de sa gorge.',
  'iso-8434-3.mate':
    'Elle s’assemble avec une douille plane sous un écrou de même module, sur tube ou flexible.',
  'iso-8434-3.mistaken':
    'Les modules -4 et -12 ont le filetage de l’évasement 37° et de l’implantation à joint torique : regardez la face.',
  'iso-8434-2.know':
    'L’extrémité mâle finit par un cône à 37° de son axe ; le tube est évasé au même angle.',
  'iso-8434-2.mistaken':
    'Les modules -2 à -5, -8 et -10 ont le filetage de l’évasement 45° : présentez un gabarit de siège au cône.',
  'iso-8434-2.mix':
    'Les pièces à 37° et à 45° se vissent et ne se touchent que sur une ligne : elles fuient et se fissurent.',
  'sae-j512.know':
    'L’extrémité mâle finit par un cône à 45° de son axe. Le plus souvent en laiton, basse pression.',
  'sae-j512.mix':
    'Elle ne remplace pas un évasement 37°, bien que plusieurs tailles aient le même filetage.',
  'sae-j512-inverted.know':
    'Le mâle est un écrou qui presse le tube évasé contre un cône dressé au fond de l’orifice.',
  'sae-j512-inverted.mate':
    'Évasement, écrou et orifice vont ensemble : remplacez l’extrémité du tube quand son évasement est marqué.',
  'sae-j512-compression.know':
    'Un écrou serre une olive de laiton sur un tube lisse ; le corps s’ouvre en chanfrein pour elle.',
  'sae-j512-compression.mistaken': 'C’est pour la basse pression : ni bague coupante ni évasement.',
  'nf-e-48-050.know':
    'Le cône de 24° de l’ISO 8434-1, pour des tubes aux anciennes cotes gaz, au pas de 1,5 mm partout.',
  'nf-e-48-050.mistaken':
    'M20x1,5 et M24x1,5 sont aussi de la série lourde de l’ISO 8434-1 : mesurez l’alésage du tube.',
  'iso-4038.know': 'Un écrou sur une conduite de frein évasée ; le siège est au fond de l’orifice.',
  'iso-4038.mistaken':
    'Deux évasements partagent l’écrou, le double et le bombé : l’extrémité du tube doit convenir à l’orifice.',
  'en-837-1.know':
    'Filetage cylindrique avec un court téton ; une rondelle est étanche au fond de l’orifice.',
  'en-837-1.npt': 'Les manomètres existent aussi avec un raccord NPT, étanche dans le filet.',
  'din-3852-1.know':
    'Un filetage métrique à 60°, conique à 1/16 ; surtout sur des lignes de graissage ou à basse pression.',
  'din-3852-1.mate':
    'Il est étanche dans un trou métrique cylindrique fait pour lui (forme Z), avec produit d’étanchéité ; un orifice à face plane ne l’est pas.',
  'iso-15171.know':
    'Un mâle sous capuchon, avec un clapet qui s’ouvre quand on visse le flexible de mesure.',
  'iso-15171.mistaken':
    'D’autres prises de pression se ressemblent et ont d’autres filetages ou pas : ne forcez jamais un flexible de mesure.',
  'iso-11926.know':
    'Filetage UN cylindrique à joint torique entre filet et hexagone ; l’orifice a un chanfrein pour le joint.',
  'iso-11926.adjustable':
    'Les extrémités orientables portent rondelle et contre-écrou ; elles ne sont étanches qu’une fois l’écrou serré.',
  'iso-11926.mistaken':
    'Les filetages sont ceux de l’évasement 37° : une implantation n’a pas de cône, un évasement pas de joint à l’hexagone.',
  'iso-6149.know':
    'Comme l’implantation en pouces, à filetage métrique ; un anneau en relief à l’entrée marque l’orifice.',
  'iso-6149.mistaken':
    'Un orifice ISO 9974 a le même filetage, sans chanfrein pour le joint : les deux ne sont pas étanches ensemble.',
  'iso-9974.know':
    'L’épaulement est étanche sur une face usinée autour de l’orifice : bague souple (forme E), arête (forme B) ou rondelle libre (forme A).',
  'iso-9974.ring':
    'Une arête de forme B marque chaque fois une nouvelle ligne : vérifiez la face avant de la réemployer.',
  'iso-1179.know':
    'Filetage gaz cylindrique ; l’épaulement est étanche par bague souple (forme E), joint torique à bague d’appui (G, H), arête (B) ou rondelle libre (A).',
  'iso-1179.mistaken':
    'Le conique R a le même pas et presque le même diamètre : la conicité les distingue.',
  'iso-8434-1.know':
    'L’extrémité mâle s’ouvre en cône de 24° d’angle total, suivi d’un alésage à la cote du tube.',
  'iso-8434-1.series':
    'Séries légère et lourde partagent des filetages à des tubes différents : mesurez le tube, ou son alésage.',
  'iso-8434-1.mate':
    'Elle reçoit une bague coupante, un embout à souder à joint torique ou un embout de flexible à cône de 24°, sous un écrou de même série.',
  'iso-8434-6.know':
    'L’extrémité mâle s’ouvre en cône de 60° d’angle total ; le nez sous l’écrou porte le cône assorti.',
  'iso-8434-6.mistaken':
    'Un siège de 30° JIS B 8363 fait saillie sur le mâle ; le cône de 60° s’ouvre vers l’intérieur.',
  'din-7631.know':
    'L’extrémité mâle s’ouvre en cône de 60° d’angle total, filetage métrique au pas de 1,5 mm.',
  'din-7631.mistaken':
    'Bien des tailles ont le filetage du cône de 24° : regardez l’angle, et l’alésage du tube derrière.',
  'jis-b-8363.know': 'Le siège est à 30° de l’axe, saillant sur l’extrémité mâle.',
  'jis-b-8363.hollow':
    'Certains mâles de la même norme ont un siège creux : regardez avant d’assembler.',
  'jis-b-8363.mistaken':
    'Son angle est proche de l’évasement 37° ; le filetage est gaz ou métrique.',
  'iso-7-1.know':
    'Un mâle à 55°, conique à 1/16 ; étanche dans une femelle conique (Rc) ou cylindrique (Rp), avec produit d’étanchéité.',
  'iso-7-1.never-g':
    'Il ne va jamais dans un orifice G, de même filetage mais sans limites pour l’étanchéité.',
  'iso-7-1.mistaken':
    'En 1/2 et 3/4 il a le pas du NPT, à un diamètre presque égal : l’angle est de 55°, non de 60°.',
  'asme-b1-20-1.know':
    'Un filetage à 60°, conique à 1/16 ; étanche dans le filet, avec produit d’étanchéité.',
  'asme-b1-20-1.swivel':
    'Un écrou tournant NPSM est étanche sur le chanfrein de 60° dans le mâle NPT, pas sur son filet.',
  'asme-b1-20-1.dryseal':
    'NPTF a le même aspect et ne diffère que par la coupe des crêtes et des fonds : voyez les marques de la pièce.',
  'sae-j476.know':
    'Crêtes et fonds se touchent avant les flancs. À l’œil et au pied à coulisse, c’est du NPT.',
  'iso-6162.know':
    'Une tête ronde et plate à joint torique dans sa face, tenue par deux demi-brides et quatre vis.',
  'iso-6162.codes':
    'Les têtes code 62 sont plus épaisses et plus larges que celles du code 61 du même flexible, et leurs vis sont placées autrement.',
};
