/** Words of the trade: how ends are made, read, mated and put together. */
export const tradeEn = {
  gender: { male: 'male', female: 'female' },
  endTypes: {
    fixed: 'fixed',
    'swivel-nut': 'swivel nut',
    'tube-nut': 'tube nut',
    stud: 'stud',
    port: 'port',
    'flange-head': 'flange head',
  },
  /** As the order line begins. */
  ordered: {
    fixed: 'Fixed end',
    'swivel-nut': 'Swivel nut',
    'tube-nut': 'Tube nut',
    stud: 'Stud end',
    port: 'Port',
    'flange-head': 'Flange head',
  },
  or: 'or',
  form: (form: string) => `form ${form}`,
  size: (size: string) => `size ${size}`,
  orderLine: 'To order by',
  toAdd: {
    stud: 'Still to say: material, and whether it is fixed or adjustable.',
    other: 'Still to say: the material.',
  },
  oRingOrdered: (designation: string, hardness: string) =>
    `O-ring ${designation}${hardness && `, NBR ${hardness}`}`,
  inTheMate: (ring: string) => `in the mating male end: ${ring}`,
  inTheStud: (ring: string) => `on the stud that screws in: ${ring}`,
  captive: 'Grooves come plain and captive; both take this ring.',
  alsoCalled: 'Also called',
  leftHand: 'Left-hand thread (LH)',
  leftHandWarning:
    'It screws on anticlockwise. No ordinary part of this size fits: order it as LH, and never force a right-hand part on.',
  nearest: (thread: string, off: string, large: boolean, male: boolean) =>
    `Nothing fits. The nearest is ${thread}, and this is ${off} too ${large ? 'large' : 'small'} for a ${male ? 'male' : 'female'} end.`,
  missing: (reading: string, tools: string) =>
    `Nothing at hand would settle it. What would: ${reading}${tools && ` (${tools})`}.`,
  cannotTell: 'I can’t tell',
  cannotTellOf: (what: string) => `Can’t tell: ${what}`,
  dryseal:
    'By its thread an NPTF end cannot be told from an NPT end: look for the mark NPTF on the part.',
  notes: 'Know it, and do not mistake it',
  also: 'Also on this thread',
  alsoUsed: {
    banjo: 'Banjo bolts use it too: a cross bore, and a washer on either side of the eye.',
    'universal-nose':
      'Hose ends with a universal nose fit the 24° and the 60° cone: look at the nose itself.',
    'jis-cone-60':
      'JIS B 8363 also has male ends with a hollow 60° seat; whether BS 5200 nuts seal on them depends on their thread length.',
  },
  pressure: {
    title: 'Working pressure',
    none: 'Not given here: it goes by standard, edition, size and make. Take it from the maker’s data; the lowest of all parts governs.',
  },
  never: {
    title: 'Never join with',
    'same-thread': (names: string) => `Same thread, other seal: ${names}`,
    'near-thread': (names: string) => `Starts to screw together, and strips or leaks: ${names}`,
    'npt-r':
      'NPT and R differ in thread angle (60° and 55°), and in most sizes in pitch: they bind, and leak.',
    'taper-in-g':
      'A tapered male end never goes into a G port: the port has no thread to seal on, and it bursts.',
    'nptf-npt':
      'NPTF seals dry only on NPTF; joined with NPT it needs sealant and is no dryseal joint.',
    'npsm-npt':
      'An NPSM nut seals only on a male NPT end with the 60° seat inside, never on its thread.',
    'flange-series': 'Code 61 and code 62: heads and bolts differ, and so do the pressures.',
  },
  sealings: {
    'face-seal': 'O-ring in the flat face',
    flare: 'metal on metal, cone in flare',
    inverted: 'metal on metal, the flared tube against the raised cone of the port',
    'stud-o-ring': 'O-ring between thread and hex, in the chamfer of the port',
    'face-ring': 'ring on the flat face around the port',
    'cutting-edge': 'metal edge on the flat face around the port',
    'cone-24': 'cutting ring, or O-ring of a 24° cone, in the 24° cone',
    'cone-24-hose': 'O-ring of the 24° cone, or metal on metal, in the 24° cone',
    'cone-swivel': 'metal on metal, cone in cone',
    npsm: 'metal on metal, on the 60° seat inside the male end; not in the thread',
    'taper-iso': 'thread in thread, with sealant',
    'taper-npt': 'thread in thread, with sealant',
    'taper-metric': 'thread in thread, with sealant',
    'test-point': 'O-ring on the valve inside',
    washer: 'loose washer under the shoulder',
    dryseal: 'thread in thread, crest on root',
    compression: 'sleeve pressed onto the tube',
    gauge: 'washer under the spigot, at the bottom of the port',
    flange: 'O-ring in the flat face of the flange head',
  },
  mates: {
    'face-seal': {
      male: 'nut (swivel or tube nut) with a flat sleeve of the same size',
      female: 'male end with an O-ring in its flat face, same size',
    },
    flare: {
      male: 'swivel nut, or tube nut over a flared tube, of the same angle and size',
      female: 'male end with a cone of the same angle and size',
    },
    inverted: {
      male: 'port with a raised cone at its bottom, same size, the flared tube between',
      female: 'tube nut of the same size over a flared tube',
    },
    'stud-o-ring': {
      male: 'port with the same thread and a chamfer for the ring',
      female: 'stud end with O-ring and the same thread',
    },
    'face-ring': {
      male: 'port with the same thread and a flat machined face around it',
      female:
        'stud end with the same thread and a ring or edge at its shoulder; on G threads also a male end with a bonded washer',
    },
    'cutting-edge': {
      male: 'port with the same thread and a flat machined face around it',
      female: 'stud end with the same thread and an edge at its shoulder',
    },
    'cone-24': {
      male: 'nut of the same series and thread with cutting ring and tube, or hose end with a 24° cone and O-ring',
      female: 'male end with a 24° cone, same series and thread',
    },
    'cone-24-hose': {
      male: 'hose end with a 24° cone and O-ring, same series and thread',
      female: 'male end with a 24° cone, same series and thread',
    },
    'cone-swivel': {
      male: 'swivel nut with the same thread and seat angle',
      female: 'male end with the same thread and seat angle',
    },
    npsm: {
      male: 'NPSM swivel nut of the same size',
      female: 'male NPT end of the same size with the 60° seat inside',
    },
    'taper-iso': {
      male: 'tapered (Rc) or parallel (Rp) female end of ISO 7-1; never a G port',
      female: 'tapered male end (R) of ISO 7-1',
    },
    'taper-npt': {
      male: 'female NPT end of the same size',
      female: 'male NPT end of the same size',
    },
    'taper-metric': {
      male: 'parallel metric hole for taper studs (form Z), same size',
      female: 'taper stud of the same size',
    },
    'test-point': {
      male: 'nut of a test hose, M16x2',
      female: 'test point, M16x2',
    },
    washer: {
      male: 'port with the same thread and a flat machined face around it',
      female: 'stud end with the same thread and a loose washer at its shoulder',
    },
    dryseal: { male: 'female NPTF end of the same size', female: 'male NPTF end of the same size' },
    compression: {
      male: 'nut and sleeve of the same size on a plain tube',
      female: 'body of the same size with the same thread, sleeve and tube',
    },
    gauge: {
      male: 'gauge port with the same thread and a flat bottom for the washer',
      female: 'gauge with the same thread',
    },
    flange: {
      male: 'pad with four bolts and two half clamps of the same code and size',
      female: 'flange head of the same code and size',
    },
  },
  /** How each is tightened, even where no figure is given. */
  methods: {
    'face-seal': 'Tightened by torque.',
    flare: 'Tightened by flats of the hex from finger-tight, or by torque.',
    inverted: 'Tightened by part of a turn from finger-tight.',
    'stud-o-ring': 'Tightened by torque.',
    'face-ring': 'Tightened by torque.',
    'cutting-edge': 'Tightened by torque.',
    'cone-24': 'Tightened by part of a turn from the firm point.',
    'cone-24-hose': 'Tightened by part of a turn from the firm point, or by torque.',
    'cone-swivel': 'Tightened by torque.',
    npsm: 'Tightened by torque.',
    'taper-iso': 'Tightened by turns past hand-tight.',
    'taper-npt': 'Tightened by turns past hand-tight.',
    'taper-metric': 'Tightened by turns past hand-tight.',
    'test-point': 'Tightened by hand.',
    washer: 'Tightened by torque.',
    dryseal: 'Tightened by turns past hand-tight.',
    compression: 'Tightened by part of a turn from finger-tight.',
    gauge: 'Tightened by torque, by the flats of the gauge and never by its case.',
    flange: 'Tightened by torque, crosswise.',
  },
  always: {
    pressure: 'Never tighten a joint that is under pressure.',
    spanner: 'Hold the body with a second spanner, so that neither tube nor hose twists.',
    ring: 'Fit a new O-ring or ring each time.',
    leak: 'Do not tighten further to stop a leak: undo it, and look at the seats.',
  },
  steps: {
    'face-seal': [
      'Clean both faces. Put a new O-ring into its groove, lightly oiled, not twisted.',
      'Bring the flat sleeve against the face in line, and run the nut down by hand.',
      'Hold the body with a second spanner and tighten to the maker’s torque.',
    ],
    flare: [
      'Check flare and cone for scratches, cracks and a full ring of contact.',
      'Oil threads and cone, and run the nut down by hand until the seats touch.',
      'Hold the body and tighten by the maker’s flats from finger-tight, or torque.',
    ],
    inverted: [
      'Check the tube’s flare and the cone at the bottom of the port; cut off a marked flare and make a new one.',
      'Bring the tube in line and screw the nut in by hand until the flare touches.',
      'Tighten by the maker’s part-turn.',
    ],
    'stud-o-ring': [
      'Look at the port’s chamfer. Oil a new O-ring and put it over the thread with a sleeve.',
      'Fixed end: screw it in by hand until the shoulder touches, then tighten to the maker’s torque.',
      'Adjustable end: back the lock nut off fully, washer to the top; screw in by hand until the washer touches, turn back at most one turn to point it, hold it, and tighten the lock nut to the maker’s torque.',
    ],
    'face-ring': [
      'Clean the flat around the port; no score may cross it.',
      'Put a new ring on, oil it, and screw the end in by hand, square to the face.',
      'Tighten to the maker’s torque.',
    ],
    'cutting-edge': [
      'Clean the flat around the port and look at the line that an earlier edge has cut.',
      'Screw the end in by hand, square to the face.',
      'Tighten to the maker’s torque.',
    ],
    'cone-24': [
      'Saw the tube square, deburr it lightly inside and outside, and clean it.',
      'Put the nut, then the cutting ring onto the tube, the ring’s edge towards the tube’s end. Oil threads, ring and cone.',
      'Hold the tube against the stop in the cone (a new ring first in a hardened stud) and run the nut down by hand until it is firm.',
      'Mark nut and tube, and tighten by the maker’s part-turn from that firm point while the tube stays on the stop.',
      'Undo it and look for a full collar raised before the ring’s edge; the ring may turn on the tube, but not slide.',
      'Assemble again to the mark, and the maker’s small part-turn beyond.',
    ],
    'cone-24-hose': [
      'Clean both cones. Put a new O-ring, oiled, into the groove of the cone.',
      'Bring the cone in line, without twisting the hose, and run the nut down by hand until it is firm.',
      'Hold the body and tighten by the maker’s part-turn from that firm point.',
    ],
    'cone-swivel': [
      'Check both cones for scratches and a full ring of contact; a cone with a groove gets a new O-ring.',
      'Bring them together in line and run the nut down by hand.',
      'Hold the body and tighten to the maker’s torque.',
    ],
    npsm: [
      'Look into the male NPT end: it needs a 60° seat inside. Check both seats for scratches.',
      'Bring them together in line and run the nut down by hand, without sealant.',
      'Hold the body and tighten to the maker’s torque.',
    ],
    'taper-iso': [
      'Clean both threads. Put sealant on the male thread, the first turn left free.',
      'Screw in by hand, then by spanner, usually one and a half to three turns more (common practice; less for large sizes).',
      'Never turn back to point it: it would leak.',
    ],
    'taper-npt': [
      'Clean both threads. Put sealant on the male thread, the first turn left free.',
      'Screw in by hand, then by spanner, usually one and a half to three turns more (common practice; less for large sizes).',
      'Never turn back to point it: it would leak.',
    ],
    'taper-metric': [
      'Clean both threads. Put sealant on the male thread, the first turn left free.',
      'Screw in by hand, then by spanner no further than the maker says: these threads are short.',
      'Never turn back to point it: it would leak.',
    ],
    'test-point': [
      'Take the pressure off first wherever it can be done: the valve opens as the nut runs on.',
      'Wipe both ends, and run the nut on by hand to its stop, without a spanner.',
      'Put the cap back on afterwards: it keeps dirt out of the valve.',
    ],
    washer: [
      'Clean the flat around the port; no score may cross it.',
      'Put a new washer on, of the size and material that the maker names, and screw the end in by hand, square to the face.',
      'Tighten to the maker’s torque.',
    ],
    dryseal: [
      'Clean both threads and put a lubricant on the male one; sealant only where the maker asks for it.',
      'Screw in by hand, then by spanner, usually one and a half to three turns more (common practice; less for large sizes).',
      'Never turn back to point it: it would leak.',
    ],
    compression: [
      'Cut the tube square and deburr it. Put the nut, then the sleeve onto the tube.',
      'Push the tube to the stop and run the nut down by hand.',
      'Tighten by the maker’s part-turn from finger-tight.',
    ],
    gauge: [
      'Put a new washer to the bottom of the port.',
      'Screw the gauge in by hand.',
      'Tighten by its flats to the maker’s torque.',
    ],
    flange: [
      'Clean both faces and put a new O-ring into its groove, lightly oiled.',
      'Set both half clamps and all four bolts by hand, with an even gap.',
      'Tighten crosswise in steps to the maker’s torque, with bolts of the grade asked for.',
    ],
  },
  assemblyOf: {
    'cone-24': 'Tube with cutting ring',
    'cone-24-hose': 'Hose end with O-ring cone',
  },
  fluids: {
    mineral: 'Mineral oil (HL, HM, HV)',
    emulsion: 'Emulsions of oil and water (HFAE, HFB)',
    solution: 'Watery solutions (HFAS)',
    glycol: 'Water-glycol (HFC)',
    'phosphate-aryl': 'Phosphate ester, aryl (HFDR)',
    'phosphate-alkyl': 'Phosphate ester, alkyl (aircraft)',
    'ester-fire': 'Polyol ester, fire resistant (HFDU)',
    vegetable: 'Vegetable ester (HETG)',
    ester: 'Synthetic ester (HEES)',
    polyglycol: 'Polyglycol (HEPG)',
    hydrocarbon: 'Polyalphaolefin (HEPR)',
    brake: 'Glycol brake fluid (ISO 4925)',
  },
  temperature: 'Temperature of the fluid',
  temperatureNote: 'Usual limits in mineral oil; compounds differ.',
  epdm: 'EPDM never meets mineral oil, not even as grease.',
  off: {
    title: 'What is it off?',
    lead: 'Left alone, it counts for nothing. It may tip the scales, and never settles anything by itself.',
    region: 'Region',
    regions: {
      anywhere: 'anywhere',
      'north-america': 'North America',
      europe: 'Europe',
      'east-asia': 'East Asia',
    },
    trade: 'Kind of machine',
    trades: {
      any: 'any',
      'mobile-hydraulics': 'mobile or industrial hydraulics',
      automotive: 'vehicle: brakes, fuel, cooling',
    },
  },
  turns: { count: 'Turns', over: 'in a length of' },
  cone: { wide: 'Wide end', narrow: 'Narrow end', over: 'Length between' },
  cones: {
    24: '24° included',
    60: '60° included',
    30: '30° to the axis',
    37: '37° to the axis',
    45: '45° to the axis',
    none: 'no blade sits',
  },
  marks: {
    none: 'no mark',
    'left-hand': 'LH, or notches across the hex',
    light: 'L (light series)',
    heavy: 'S (heavy series)',
    nptf: 'NPTF',
  },
  crests: {
    rounded: 'Crests and roots are rounded (55°)',
    flat: 'Crests are cut flat (60°)',
  },
  hands: {
    right: 'It screws on clockwise',
    left: 'It screws on anticlockwise',
  },
  endPictures: {
    fixed: 'Nothing turns: thread and body are one',
    'swivel-nut': 'A nut that turns on a hose end or body',
    'tube-nut': 'A loose nut that slides on a tube',
    stud: 'A male end that screws into a block, sealing at its shoulder or thread',
    port: 'A threaded hole in a block or body',
    'flange-head': 'A flat head without thread, held by clamps',
  },
  kinds: {
    'turns-over': {
      name: 'Turns in a length',
      title: 'Count turns along a rule',
      how: 'Lay a rule along the thread. From one crest, count ten turns (or as many as there are) and read the length they cover.',
    },
    'end-type': {
      name: 'What the end is',
      title: 'What is this end?',
      how: 'What turns, and what does it screw into?',
    },
    'seat-gauge': {
      name: 'Seat gauge',
      title: 'Try a seat gauge (blades)',
      how: 'Hold the blades against the cone, along the axis, against the light. 30°, 37° and 45° look alike to the eye.',
    },
    'cone-size': {
      name: 'Cone by caliper',
      title: 'Measure the cone',
      how: 'Across its wide end, across its narrow end, and the length between the two along the axis (caliper rod, or rule). These give its angle.',
    },
    'nose-od': {
      name: 'Nose diameter',
      title: 'Measure the nose',
      how: 'Across the narrow end of the cone that stands in the nut, at its tip. Caliper or rule. On a hose end it stands in for the tube.',
    },
    'crest-form': {
      name: 'Crest form',
      title: 'Rounded or flat crests?',
      how: 'Look along the crests with a lens, where they are not worn.',
    },
    'flange-thickness': {
      name: 'Head thickness',
      title: 'Measure the head of the flange',
      how: 'How thick is the rim that the clamps hold? Caliper or rule.',
    },
    'bolt-spacing': {
      name: 'Bolt spacing',
      title: 'Measure between the bolts',
      how: 'From middle to middle of two bolts, the longer way. Measure edge to edge of two bolts on the same side.',
    },
    marking: {
      name: 'Mark',
      title: 'Look for a mark',
      how: 'Stamped letters, or small notches across the corners of the hex.',
    },
    hand: {
      name: 'Hand',
      title: 'Which way does it screw on?',
      how: 'Hold the thread upright: on a right-hand thread the turns rise to the right.',
    },
    hex: {
      name: 'Hex',
      title: 'Measure across the flats',
      how: 'Weak evidence: one thread comes on several hexes. Caliper or rule across two flats.',
    },
  },
  /** Where a female end is read in another way. */
  femaleHow: {
    'pitch-gauge':
      'Female end: lay blades into the bore, along the axis. Where they do not reach, screw a known male part in.',
    'turns-over': 'Female end: press soft paper or putty in, take it out, and count its ridges.',
    taper:
      'Female end: screw a straight male part (a plug) in. In a tapered bore it tightens after a few turns; in a straight one it runs to the end.',
    flank: 'Female end: hold the gauge into the bore, or take an impression and gauge that.',
    'crest-form': 'Female end: look at the crests inside the mouth, with a lens and a light.',
    'tube-od': 'Outside diameter of the tube that the nut sits on.',
    'seat-gauge': 'Female end: hold the blade into the seat, or against the cone in the nut.',
    seat: 'Which drawing is like the inside of this end? The heavy line is where it seals.',
  },
  /** Of the families, where the tables' own English needs other words. */
  familyNotes: {} as Readonly<Record<string, string>>,
} as const;
