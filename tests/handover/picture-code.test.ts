import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { fromBase45, toBase45 } from '../../src/handover/base45';
import { foldSheet } from '../../src/handover/coded-sheet';
import {
  decodePictureCode,
  encodePictureCode,
  sheetFromCode,
} from '../../src/handover/picture-code';
import type { Sheet } from '../../src/journey/8-sheet/sheet-schema';
import { exampleSheet } from '../journey/8-sheet/example';

const photo = { widthPx: 2048, heightPx: 1536, pictureWidthPx: 2048 };

let sheet: Sheet;
beforeAll(async () => {
  sheet = (await exampleSheet()).sheet;
});

describe('base 45', () => {
  test('examples of RFC 9285, section 4.3 and 4.4', () => {
    for (const [plain, coded] of [
      ['AB', 'BB8'],
      ['Hello!!', '%69 VD92EX0'],
      ['base-45', 'UJCLQE7W581'],
      ['ietf!', 'QED8WEX0'],
    ] as const) {
      expect(toBase45(strToU8(plain))).toBe(coded);
      expect(fromBase45(coded)).toEqual(strToU8(plain));
    }
  });

  test('any bytes come back; any text gives bytes or null', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(bytes);
      }),
      { seed: 8 },
    );
    fc.assert(
      fc.property(fc.string(), (text) => {
        const bytes = fromBase45(text);
        if (bytes) expect(toBase45(bytes)).toBe(text);
      }),
      { seed: 8, numRuns: 500 },
    );
    // Section 6: FGW is the last value, GGW one too many.
    expect(fromBase45('FGW')).toEqual(Uint8Array.of(255, 255));
    expect(fromBase45('GGW')).toBeNull();
  });
});

test('numbers come back far closer than their uncertainty', () => {
  const value = fc.double({ min: 0.2, max: 80, noNaN: true });
  const u = fc.double({ min: 1e-4, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      value,
      u,
      value,
      u,
      fc.double({ min: -1, max: 1, noNaN: true }),
      (p, pu, d, du, c) => {
        const measured = {
          ...sheet.measurement!,
          pitchMm: { value: p, u: pu },
          majorDiameterMm: { value: d, u: du },
          correlation: c,
        };
        const read = throughCode({ ...sheet, measurement: measured });
        const back = read.measurement!;
        expect(Math.abs(back.pitchMm.value - p)).toBeLessThan(pu / 5 + 1e-9);
        expect(Math.abs(back.majorDiameterMm.value - d)).toBeLessThan(du / 5 + 1e-9);
        expect(Math.abs(back.pitchMm.u / pu - 1)).toBeLessThan(0.006);
        expect(Math.abs(back.correlation - c)).toBeLessThan(1e-3);
      },
    ),
    { seed: 8 },
  );
});

test('words in any script come back; too many words are cut, the numbers never', () => {
  const titled = { ...sheet, title: 'Hydraulikstütze – Ω ½ № ポンプ' };
  expect(throughCode(titled).title).toBe(titled.title);
  const wordy = {
    ...sheet,
    remarks: Array.from({ length: 1500 }, (_, i) =>
      String.fromCharCode(33 + ((i * 7919) % 89)),
    ).join(''),
  };
  const read = throughCode(wordy);
  expect(wordy.remarks.startsWith(read.remarks)).toBe(true);
  expect(read.measurement).toEqual(sheet.measurement);
  expect(read.conclusion.decision).toEqual(sheet.conclusion.decision);
});

test('before the drawing stays behind, what the other side works out again does', async () => {
  const { sheet } = await exampleSheet();
  const [crestless, drawing, plain] = (['no-crests', 'drawing-first', 'no-drawing'] as const).map(
    (detail) => foldSheet(sheet, photo, detail),
  );
  expect(crestless!.m!.b.length).toBeGreaterThan(0);
  expect(drawing!.l).toEqual(crestless!.l);
  expect(drawing!.m!.b).toEqual([]);
  expect(drawing!.m!.p).toEqual(crestless!.m!.p);
  expect(drawing!.c.t.length).toBeLessThanOrEqual(3);
  expect(plain!.l).toBeUndefined();
});

test('markup and prototype keys arrive as text or not at all', () => {
  const markup = '<img src=x onerror=alert(1)>';
  expect(throughCode({ ...sheet, title: markup }).title).toBe(markup);
  expect(decodePictureCode(code('{"v":1,"__proto__":{"polluted":1}}')).ok).toBe(false);
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
});

test('a code from before the flash was told still opens as the same sheet', () => {
  const coded = decodePictureCode(codeWithoutFlash);
  if (!coded.ok) throw new Error(coded.reason);
  const read = sheetFromCode(coded.value, { widthPx: 1280, heightPx: 960 });
  const now = throughCode(sheet);
  // What such a code does not say of the end is open.
  const { conclusion } = now;
  const said = { end: null, form: null, endTypes: [] };
  const then = {
    ...conclusion,
    connections: conclusion.connections.map((c) => ({ ...c, ...said })),
    decision: {
      ...conclusion.decision,
      connection: { ...conclusion.decision.connection!, ...said },
    },
    hand: null,
  };
  const value = { ...now, conclusion: then, id: '5b1c7a52-0d1c-4a55-9d8e-6f3f0c2b7a10' };
  expect(read).toEqual({ ok: true, value });
  expect(now.shots[0]!.photo.flashFired).toBe(false);
});

test('what the photo shows of the end, its thread, the hex and the other end come back', () => {
  const told = {
    endShows: {
      nose: { none: 0.5, 'cone-30': 0.25, 'cone-37': 0.125, 'cone-45': 0.125 },
      base: { none: 0.75, 'o-ring': 0.125, shoulder: 0.125 },
    },
    threadShows: {
      profile: { '60': 0.25, '55': 0.625, npt: 0.125 },
      taper: { straight: 0.125, tapered: 0.875 },
    },
    hexAcrossFlatsMm: { value: 27.1, u: 0.2 },
    diameterParts: [
      { share: 0.96, u: 0.08 },
      { share: 0.04, u: 0.9 },
    ],
    taperParts: [{ share: 1, u: 0.004 }],
    otherPeriods: [{ ratio: 0.5, share: 0.012 }],
  };
  const seen = { ...sheet.measurement!, ...told };
  const other = {
    measurement: { ...sheet.measurement!, pitchMm: { value: 1.814, u: 0.004 } },
    axis: [
      [512, 384],
      [256, 384],
    ] as [[number, number], [number, number]],
  };
  const read = throughCode({
    ...sheet,
    measurement: seen,
    shots: [{ ...sheet.shots[0]!, measurement: seen, otherEnds: [other] }],
  });
  expect(read.measurement).toMatchObject(told);
  const [end] = read.shots[0]!.otherEnds;
  expect(end!.measurement.pitchMm).toEqual({ value: 1.814, u: 0.004 });
  expect(end!.axis[0]![1] / end!.axis[0]![0]).toBeCloseTo(384 / 512, 2);
});

test('that the flash fired comes back, with its note', () => {
  const shot = sheet.shots[0]!;
  const lit: Sheet = {
    ...sheet,
    shots: [
      {
        ...shot,
        photo: { ...shot.photo, flashFired: true },
        notes: [...shot.notes, 'flash-fired'],
      },
    ],
  };
  const [read] = throughCode(lit).shots;
  expect(read!.photo.flashFired).toBe(true);
  expect(read!.notes).toEqual(['few-markers', 'flash-fired']);
});

describe('refused', () => {
  test('codes of others, damaged ones, newer ones', () => {
    expect(decodePictureCode('https://example.org/')).toMatchObject({ reason: 'not-ours' });
    expect(decodePictureCode('CRESTWISE:')).toMatchObject({ reason: 'damaged-code' });
    expect(decodePictureCode('CRESTWISE:GGX')).toMatchObject({ reason: 'damaged-code' });
    expect(decodePictureCode(code('[]'))).toMatchObject({ reason: 'damaged-code' });
    expect(decodePictureCode(code('{"v":2}'))).toMatchObject({ reason: 'newer-version' });
  });

  test('a code that swells', () => {
    const bomb = code(JSON.stringify('x'.repeat(3e6)));
    expect(bomb.length).toBeLessThan(6000);
    expect(decodePictureCode(bomb)).toMatchObject({ reason: 'damaged-code' });
  });

  test('no JSON of our shape makes unfolding throw', () => {
    const text = encodePictureCode(sheet, photo);
    const coded = text.ok ? decodePictureCode(text.value) : null;
    if (!coded?.ok) throw new Error('no example');
    const raw = JSON.stringify(coded.value);
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(coded.value)), fc.jsonValue(), (key, value) => {
        const bent = decodePictureCode(code(JSON.stringify({ ...JSON.parse(raw), [key]: value })));
        if (bent.ok) sheetFromCode(bent.value, { widthPx: 1280, heightPx: 960 });
      }),
      { seed: 8, numRuns: 500 },
    );
    for (const t of [1e300, -1, 1e15]) {
      const bent = decodePictureCode(code(JSON.stringify({ ...JSON.parse(raw), t: [t, t] })));
      if (bent.ok) sheetFromCode(bent.value, { widthPx: 1280, heightPx: 960 });
    }
  });

  test('any text after the mark', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(decodePictureCode(`CRESTWISE:${toBase45(bytes)}`).ok).toBe(false);
      }),
      { seed: 8, numRuns: 500 },
    );
  });
});

/** The example sheet as it was coded at commit 80fd668. */
const codeWithoutFlash = [
  'CRESTWISE:P*IIKOWOO+S1$X2$D7MQS7.9LZ3TM0.BGW+0FTA7MG0JCMPR8:VO3KL*2.BLZ:T4EH*T3D',
  'MRAMT-ELP0LU4MN-AQN8V:SJ$P+TR29AN4QH3L:ZTSD4FQFW15$7CNQ1J6R4YJIDU:9UAVH2ODWKKI+3',
  'MUS/1E$J6FRC.7RHHBHWN3UC10L06T72FDR31+L%$CBCAJVRUE6ZIJOAF$21QES3NKTJLYSTHDRKURTE',
  '4DG1XSKV9QL9H$/PS+U$DQV:83$GN+MR:4/R5D-CGQDC*CRIV7.B-M4YZ2191.3A$APS/NUAUY4R1EHB',
  '.F.CIO-V15TTSM.A8ZH2Q*K/V3C+AFF62KLX LM$Q6G7NQB9ZU9DMW8P5:SM 40UO.PBB777.KG*GU1L',
  '6Y2N4B-SMHBMX6F+9E..M6*1L.K0/RTY8*AK9WU5T0L2RC3UX-PS9D-/6EDQ17S078 YFUW0D-ARCK-7',
  'FXT0:JO875+WC::2T:G-4WV:N0/OT%Q2CJQC1S5EVS51/OB1DQ:4DBKRB9LRN1/0PI7EGAFZGRLPEIIF',
  'HMK16NKEGT0M3D7NCOO9Y6EQUVO43FQH4AO97VXZLGDV5%E.OV8NTIBUU19OM2WI1T-N7I6M666L727Q',
  'L2',
].join('');

/** A code made by hand; a stream without back-references into the dictionary needs none. */
function code(json: string): string {
  return `CRESTWISE:${toBase45(deflateSync(strToU8(json)))}`;
}

function throughCode(of: Sheet): Sheet {
  const text = encodePictureCode(of, photo);
  if (!text.ok) throw new Error(text.reason);
  expect(text.value.length).toBeLessThanOrEqual(909);
  const coded = decodePictureCode(text.value);
  if (!coded.ok) throw new Error(coded.reason);
  const read = sheetFromCode(coded.value, { widthPx: 1280, heightPx: 960 });
  if (!read.ok) throw new Error(read.reason);
  return read.value;
}

test('what is drawn of the seats comes back to a ten-thousandth of the width', () => {
  const lines: [number, number][][] = [
    [
      [190, 170],
      [160, 200],
    ],
    [
      [190, 310],
      [160, 280],
    ],
  ];
  const [shot] = sheet.shots;
  const overlay = { ...shot!.overlay!, ends: [{ end: 0, seat: 'cone-37' as const, lines }] };
  const coded = encodePictureCode({ ...sheet, shots: [{ ...shot!, overlay }] }, photo);
  if (!coded.ok) throw new Error(coded.reason);
  const read = decodePictureCode(coded.value);
  if (!read.ok) throw new Error(read.reason);
  const opened = sheetFromCode(read.value, { widthPx: 640, heightPx: 480 });
  if (!opened.ok) throw new Error(opened.reason);
  const [feature] = opened.value.shots[0]!.overlay!.ends!;
  expect(feature).toMatchObject({ end: 0, seat: 'cone-37' });
  for (const [i, line] of feature!.lines.entries())
    for (const [k, [x, y]] of line.entries())
      expect(Math.hypot(x - lines[i]![k]![0], y - lines[i]![k]![1])).toBeLessThan(0.064);
});
