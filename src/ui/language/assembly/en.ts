/** How ends seal, what they mate with, and how they are put together: method only, the figures are
 *  the maker's. Common practice, from memory; turns past hand-tight of tapers likewise. */
export const assemblyEn = {
  ends: { male: 'male', female: 'female' },
  endTypes: {
    fixed: 'fixed end',
    'swivel-nut': 'swivel nut',
    stud: 'stud',
    port: 'port',
    'tube-nut': 'tube nut',
    'flange-head': 'flange head',
  },
  endRow: 'End',
  form: 'Form',
  formOpen: 'open: see the sealing ring or edge',
  leftHand:
    'Left-hand thread (LH). It tightens anticlockwise; no right-hand part fits it. Order it as LH, and never force a right-hand part on.',
  nptf: 'NPT and NPTF cannot be told apart by measuring. See the part’s marks or its drawing before you choose.',
  tapers: 'A taper male goes into Rp (parallel) or Rc (taper) of ISO 7-1, never into a G port.',
  lookAlikes: 'Looks alike, never force together',
  alsoUses: 'Also on this thread, not in these tables',
  inMating: 'in the mating male end',
  byForm: 'by form, see the maker’s data',
  grooves: 'Grooves come plain or captive (narrowed at the mouth): the ring is the same size.',
  sealings: {
    'face-seal': 'O-ring in the flat face of the male end',
    flare: 'metal on metal, cone in flare',
    inverted: 'metal on metal, tube flare on the cone at the bottom of the port',
    'stud-o-ring': 'O-ring under the hex, in the chamfer of the port',
    'stud-retained-ring': 'O-ring in a retaining ring, on the flat face around the port',
    'face-ring': 'ring or edge on the flat face around the port',
    'cone-24': 'cutting ring, or O-ring of a cone, in the 24° cone',
    'cone-24-hose': 'cone with O-ring, or cutting ring on a tube, in the 24° cone',
    'cone-swivel': 'metal on metal, cone in cone',
    taper: 'thread in thread, with sealant',
    flange: 'O-ring in the flat face of the flange head',
  },
  mates: {
    'face-seal': {
      male: 'swivel nut with a flat sleeve of the same size',
      female: 'male end of the same size with an O-ring in its face',
    },
    flare: {
      male: 'swivel nut of the same angle and size, on flared tube or hose',
      female: 'male end with an outside cone of the same angle and size',
    },
    inverted: {
      male: 'inverted flare port of the same size, with the tube flared to it',
      female: 'tube nut of the same size on a flared tube',
    },
    'stud-o-ring': {
      male: 'port with the same thread and a chamfer for the ring',
      female: 'stud of the same standard and size, with its O-ring',
    },
    'stud-retained-ring': {
      male: 'port with the same thread and a wide flat face around it',
      female: 'stud of the same standard and size, with ring or edge',
    },
    'face-ring': {
      male: 'port with the same thread and a flat machined face around it',
      female: 'stud of the same standard and size, with ring or edge',
    },
    'cone-24': {
      male: 'nut of the same series (L or S) with cutting ring and tube, or a hose end with a 24° cone',
      female: 'male end of the same series (L or S) and size with an inside 24° cone',
    },
    'cone-24-hose': {
      male: 'nut of the same series (L or S) with cutting ring and tube, or a hose end with a 24° cone',
      female: 'male end of the same series (L or S) and size with an inside 24° cone',
    },
    'cone-swivel': {
      male: 'swivel nut with the same thread and seat angle',
      female: 'male end with the same thread and seat angle',
    },
    taper: {
      male: 'female thread of the same standard',
      female: 'taper male thread of the same standard',
    },
    flange: {
      male: 'pad with four bolts and two half clamps of the same code and size',
      female: 'flange head of the same code and size, with half clamps',
    },
  },
  steps: {
    'face-seal': [
      'Clean both faces. Put a new O-ring into its groove, lightly oiled, not twisted.',
      'Bring the flat sleeve against the face in line, and run the nut down by hand.',
      'Hold the body with a backup spanner and tighten the nut to the maker’s torque.',
    ],
    flare: [
      'Check flare and cone for scratches, cracks and a full ring of contact.',
      'Oil threads and cone, and run the nut down by hand until the seats touch.',
      'Hold the body with a backup spanner and turn the nut by the maker’s flats from finger-tight, or to torque.',
      'If it leaks, do not tighten further to stop the leak: release the pressure and look at the seats.',
    ],
    inverted: [
      'Check the tube’s flare and the cone at the bottom of the port; a marked flare is cut off and made anew.',
      'Push the tube straight onto the cone and run the nut in by hand.',
      'Hold the body and tighten the nut to the maker’s turn or torque; the tube must not twist.',
    ],
    'stud-o-ring': [
      'Inspect the port’s chamfer. Oil a new O-ring and put it over the thread with a sleeve.',
      'Fixed stud: screw in by hand until the hex touches, then tighten to the maker’s torque.',
      'Adjustable stud: back the lock nut off fully, washer up; screw in by hand until the washer touches; turn back at most one turn to point it.',
      'Hold it so with a backup spanner and tighten the lock nut to the maker’s torque.',
    ],
    'stud-retained-ring': [
      'Clean the flat around the port; no score may cross it. Put on a new O-ring inside its retaining ring, lightly oiled.',
      'Fixed stud (form G): screw in by hand until the ring touches, then tighten to the maker’s torque.',
      'Adjustable stud (form H): back the lock nut off, screw in until the ring touches, turn back at most one turn to point it, hold it with a backup spanner and tighten the lock nut to the maker’s torque.',
    ],
    'face-ring': [
      'Clean the flat around the port; no score may cross it.',
      'Put a new ring on (if this form has one), oil it, and screw in by hand square to the face.',
      'Tighten to the maker’s torque.',
    ],
    'cone-24': [
      'Cut the tube square and deburr it. Slide on the nut, then the cutting ring, its cutting edge towards the end of the tube.',
      'Oil thread, cone and ring. A new ring is best pre-assembled in a hardened tool.',
      'Push the tube firmly against the stop, hold it there, and run the nut down until it becomes firm. Mark nut and tube.',
      'Hold the body with a backup spanner and turn the nut by the maker’s part-turn from firm.',
      'Undo it and look: a full collar of raised metal must stand before the ring’s edge. The ring may turn, but not slide.',
      'Put it together again to the mark, then the maker’s small part-turn beyond.',
    ],
    'cone-24-hose': [
      'Check both cones. Put a new O-ring into the cone’s groove, lightly oiled. (A tube with cutting ring is pre-assembled first.)',
      'Bring the ends together in line and run the nut down by hand until it becomes firm.',
      'Hold the body with a backup spanner and turn the nut by the maker’s part-turn from firm; the hose must not twist.',
    ],
    'cone-swivel': [
      'Check both cones for scratches and a full ring of contact; where the cone carries an O-ring, fit a new one.',
      'Bring them together in line and run the nut down by hand.',
      'Hold the body with a backup spanner and tighten to the maker’s torque.',
    ],
    taper: [
      'Clean both threads. Put sealant on the male thread, the first turn left free; dryseal threads take a lubricant where no sealant is asked for.',
      'Screw in by hand, then by spanner, usually one and a half to three turns past hand-tight (common practice).',
      'Never turn back to point it: it would leak. It must not go into a G port or any other straight port that is not Rp.',
    ],
    flange: [
      'Clean both faces and put a new O-ring into its groove, lightly oiled.',
      'Set both half clamps and all four bolts by hand, with an even gap.',
      'Tighten crosswise in steps to the maker’s torque, with bolts of the grade asked for.',
    ],
  },
};
export type AssemblyWords = typeof assemblyEn;
