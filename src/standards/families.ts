/** What there is to know of each connection family beyond its table rows. Sentences stand behind
 *  stable keys, so that they can be put into other languages; `en` is the source text. They say
 *  what the standards and common practice hold, in own words, and leave torques, turns and
 *  pressures to the maker's data. */
export interface Note {
  readonly key: string;
  readonly en: string;
  /** Where it comes from. */
  readonly basis: 'standard' | 'common practice';
}

export interface Family {
  /** As in the connection rows. */
  readonly family: string;
  /** How to know it, what it mates with, and what it is mistaken for. */
  readonly notes: readonly Note[];
}

const note =
  (prefix: string) =>
  (name: string, basis: Note['basis'], en: string): Note => ({
    key: `family.${prefix}.${name}`,
    basis,
    en,
  });

const faceSeal = note('iso-8434-3');
const flare37 = note('iso-8434-2');
const flare45 = note('sae-j512');
const inverted = note('sae-j512-inverted');
const compression = note('sae-j512-compression');
const cone24Gas = note('nf-e-48-050');
const brake = note('iso-4038');
const gauge = note('en-837-1');
const taperMetric = note('din-3852-1');
const testPoint = note('iso-15171');
const inchStud = note('iso-11926');
const metricStud = note('iso-6149');
const flatMetric = note('iso-9974');
const flatG = note('iso-1179');
const cone24 = note('iso-8434-1');
const cone60 = note('iso-8434-6');
const cone60Metric = note('din-7631');
const seat30 = note('jis-b-8363');
const taperR = note('iso-7-1');
const taperNpt = note('asme-b1-20-1');
const dryseal = note('sae-j476');
const flange = note('iso-6162');

export const families: readonly Family[] = [
  {
    family: 'ISO 8434-3',
    notes: [
      faceSeal(
        'know',
        'standard',
        'The male end is flat and carries an O-ring in a groove of its face.',
      ),
      faceSeal(
        'ring',
        'common practice',
        'The ring is of 90 durometer: a softer one of the same size is pushed out of its groove.',
      ),
      faceSeal(
        'mate',
        'standard',
        'It mates with a flat sleeve under a swivel nut of the same dash size, on tube or hose.',
      ),
      faceSeal(
        'mistaken',
        'standard',
        'Sizes -4 and -12 share their thread with the 37° flare and the O-ring stud: look at the face.',
      ),
    ],
  },
  {
    family: 'ISO 8434-2',
    notes: [
      flare37(
        'know',
        'standard',
        'The male end closes with a cone of 37° to its axis; the tube is flared to the same angle.',
      ),
      flare37(
        'mistaken',
        'standard',
        'Sizes -2 to -5, -8 and -10 share their thread with the 45° flare: hold a seat gauge to the cone.',
      ),
      flare37(
        'mix',
        'common practice',
        '37° and 45° parts screw together and touch on a line only: they leak and crack.',
      ),
    ],
  },
  {
    family: 'SAE J512',
    notes: [
      flare45(
        'know',
        'standard',
        'The male end closes with a cone of 45° to its axis. Mostly brass, for low pressure.',
      ),
      flare45(
        'mix',
        'common practice',
        'It is no substitute for a 37° flare, though several sizes share the thread.',
      ),
    ],
  },
  {
    family: 'SAE J512 inverted',
    notes: [
      inverted(
        'know',
        'standard',
        'The male end is a nut that presses the flared tube against a cone that stands up at the bottom of the port.',
      ),
      inverted(
        'mate',
        'common practice',
        'Flare, nut and port belong together: replace the tube end when its flare is marked.',
      ),
    ],
  },
  {
    family: 'SAE J512 compression',
    notes: [
      compression(
        'know',
        'standard',
        'A nut presses a brass sleeve onto a plain tube; the body opens in a chamfer for the sleeve.',
      ),
      compression(
        'mistaken',
        'common practice',
        'It is for low pressure: no substitute for a cutting ring or a flare.',
      ),
    ],
  },
  {
    family: 'NF E 48-050',
    notes: [
      cone24Gas(
        'know',
        'standard',
        'The 24° cone of ISO 8434-1, for tubes of the old gas-pipe sizes and with 1.5 mm pitch throughout.',
      ),
      cone24Gas(
        'mistaken',
        'standard',
        'M20x1.5 and M24x1.5 are also the heavy series of ISO 8434-1: measure the bore for the tube.',
      ),
    ],
  },
  {
    family: 'ISO 4038',
    notes: [
      brake(
        'know',
        'standard',
        'A tube nut on a flared brake line; the seat stands at the bottom of the port.',
      ),
      brake(
        'mistaken',
        'common practice',
        'Two flares share the nut, a double flare and a bubble flare: the tube end must match the port.',
      ),
    ],
  },
  {
    family: 'EN 837-1',
    notes: [
      gauge(
        'know',
        'standard',
        'A straight thread with a short spigot at its tip; a washer seals at the bottom of the port.',
      ),
      gauge('npt', 'standard', 'Gauges also come with NPT ends, which seal in the thread.'),
    ],
  },
  {
    family: 'DIN 3852-1',
    notes: [
      taperMetric(
        'know',
        'standard',
        'A 60° metric thread that tapers by 1 in 16; mostly on grease and low-pressure lines.',
      ),
      taperMetric(
        'mate',
        'standard',
        'It seals in a parallel metric hole made for it (form Z), with sealant; a port with a flat face is not.',
      ),
    ],
  },
  {
    family: 'ISO 15171',
    notes: [
      testPoint(
        'know',
        'common practice',
        'A male end under a cap, with a valve inside that opens as the test hose is screwed on.',
      ),
      testPoint(
        'mistaken',
        'common practice',
        'Other test points look alike and have other threads or pitches: never force a test hose on.',
      ),
    ],
  },
  {
    family: 'ISO 11926',
    notes: [
      inchStud(
        'know',
        'standard',
        'A straight UN thread with an O-ring between thread and hex; the port has a chamfer that takes the ring.',
      ),
      inchStud(
        'adjustable',
        'standard',
        'Adjustable ends carry a washer and a lock nut above the ring; they seal only when the nut is home.',
      ),
      inchStud(
        'mistaken',
        'standard',
        'The threads are those of the 37° flare: a stud end has no cone, and a flare has no ring at the hex.',
      ),
    ],
  },
  {
    family: 'ISO 6149',
    notes: [
      metricStud(
        'know',
        'standard',
        'As the inch O-ring stud, on a metric thread; a raised ring around the mouth marks the port.',
      ),
      metricStud(
        'mistaken',
        'standard',
        'An ISO 9974 port takes the same thread but has no chamfer for the ring: the two do not seal on each other.',
      ),
    ],
  },
  {
    family: 'ISO 9974',
    notes: [
      flatMetric(
        'know',
        'standard',
        'The shoulder seals on a machined flat around the port: by a soft ring in the shoulder (form E), a cutting edge (form B) or a loose washer (form A).',
      ),
      flatMetric(
        'ring',
        'common practice',
        'A form B edge bites a new line each time: check the flat before it is used again.',
      ),
    ],
  },
  {
    family: 'ISO 1179',
    notes: [
      flatG(
        'know',
        'standard',
        'A straight pipe thread; the shoulder seals by a soft ring (form E), an O-ring with a retaining ring (G, H), an edge (B) or a loose washer (A).',
      ),
      flatG(
        'mistaken',
        'standard',
        'The R taper has the same pitch and nearly the same diameter: the taper tells them apart.',
      ),
    ],
  },
  {
    family: 'ISO 8434-1',
    notes: [
      cone24(
        'know',
        'standard',
        'The male end opens in a cone of 24° included angle, with a bore the size of the tube behind it.',
      ),
      cone24(
        'series',
        'standard',
        'Light and heavy series share threads at different tube sizes: measure the tube, or its bore in the end.',
      ),
      cone24(
        'mate',
        'standard',
        'It takes a cutting ring, a welding nipple with O-ring, or a hose end with a 24° cone, under a nut of the same series.',
      ),
    ],
  },
  {
    family: 'ISO 8434-6',
    notes: [
      cone60(
        'know',
        'standard',
        'The male end opens in a cone of 60° included angle; the nipple under the nut has the matching outward cone.',
      ),
      cone60(
        'mistaken',
        'common practice',
        'A 30° seat of JIS B 8363 stands outwards on the male end; the 60° cone opens inwards.',
      ),
    ],
  },
  {
    family: 'DIN 7631',
    notes: [
      cone60Metric(
        'know',
        'standard',
        'The male end opens in a cone of 60° included angle on a metric thread of 1.5 mm pitch.',
      ),
      cone60Metric(
        'mistaken',
        'standard',
        'Many sizes share the thread of the 24° cone: look at the angle, and for the tube bore behind it.',
      ),
    ],
  },
  {
    family: 'JIS B 8363',
    notes: [
      seat30('know', 'standard', 'The seat stands at 30° to the axis, outwards on the male end.'),
      seat30(
        'hollow',
        'common practice',
        'Some male ends of the same standard have a hollow seat instead: look before you mate them.',
      ),
      seat30(
        'mistaken',
        'common practice',
        'Its angle is close to the 37° flare; the thread is a pipe or metric one.',
      ),
    ],
  },
  {
    family: 'ISO 7-1',
    notes: [
      taperR(
        'know',
        'standard',
        'A 55° male thread that tapers by 1 in 16; it seals in a tapered (Rc) or parallel (Rp) female thread, with sealant.',
      ),
      taperR(
        'never-g',
        'standard',
        'It never goes into a G port, which has the same thread and no limits to seal on.',
      ),
      taperR(
        'mistaken',
        'standard',
        'At 1/2 and 3/4 it has the pitch of NPT, at nearly the same diameter: the thread angle is 55°, not 60°.',
      ),
    ],
  },
  {
    family: 'ASME B1.20.1',
    notes: [
      taperNpt(
        'know',
        'standard',
        'A 60° thread that tapers by 1 in 16; it seals in the thread, with sealant.',
      ),
      taperNpt(
        'swivel',
        'common practice',
        'An NPSM swivel nut seals on the 60° chamfer inside a male NPT end, not on its thread.',
      ),
      taperNpt(
        'dryseal',
        'standard',
        'NPTF looks the same and differs only in how far crests and roots are cut: see the part’s marks.',
      ),
    ],
  },
  {
    family: 'SAE J476',
    notes: [
      dryseal(
        'know',
        'standard',
        'Crests and roots are cut to meet before the flanks do. By eye and caliper it is an NPT thread.',
      ),
    ],
  },
  ...([1, 2] as const).map((part) => ({
    family: `ISO 6162-${part}`,
    title: `Split flange heads, code ${part === 1 ? 61 : 62} (SAE J518-${part})`,
    notes: [
      flange(
        'know',
        'standard',
        'A flat round head with an O-ring in its face, clamped by two half flanges and four bolts.',
      ),
      flange(
        'codes',
        'standard',
        'Code 62 heads are thicker and wider than code 61 heads of the same hose, and their bolts stand elsewhere.',
      ),
    ],
  })),
];

export function familyOf(name: string): Family | null {
  return families.find(({ family }) => family === name) ?? null;
}

/** What there is to know of one end. An NPSM swivel shares its standard with the NPT taper, but
 *  nothing of how it seals. */
export function notesOn(end: {
  readonly family: string;
  readonly form: string | null;
}): readonly Note[] {
  const notes = familyOf(end.family)?.notes ?? [];
  if (end.form !== 'NPSM swivel') return notes;
  return notes.filter(({ key }) => key === 'family.asme-b1-20-1.swivel');
}
