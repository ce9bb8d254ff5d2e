import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { makePng } from '../journey/1-photo/make-files';
import { drawScrew, marksOf } from '../journey/drawn-screw';
import { jsonLines, runCommand } from './run-command';

const estimate = z.object({ value: z.number(), u: z.number() });

test('--ruler measures a screw without the card; marks outside the photo are refused', async () => {
  const screw = {
    pitchMm: 1.5,
    majorMm: 9.9,
    threadMm: 24,
    headMm: { across: 16, length: 6 },
    pxPerMm: 16,
    axisHeightMm: 4.5,
    distanceMm: 250,
    angleRad: 0.1,
    gapMm: 14,
    table: 205,
    metal: 150,
    divisionMm: 1,
    seed: 5,
  };
  const photo = join(mkdtempSync(join(tmpdir(), 'crestwise-')), 'screw.png');
  writeFileSync(photo, makePng(drawScrew(screw, (image) => image)));
  const { from, to, mm } = marksOf(screw);
  const { code, out } = await runCommand(
    'measure',
    '--json',
    '--ruler',
    [...from, ...to, mm].join(','),
    photo,
  );
  expect(code).toBe(0);
  const [answer] = jsonLines(out);
  expect(answer).toMatchObject({
    outcome: 'measured',
    reference: { kind: 'rule', axisHeightMm: null, cameraHeightMm: null, tiltDeg: null },
  });
  const { pitchMm, majorDiameterMm, correlation } = z
    .object({ pitchMm: estimate, majorDiameterMm: estimate, correlation: z.number() })
    .parse(answer.thread);
  expect(Math.abs(pitchMm.value - screw.pitchMm)).toBeLessThan(1.96 * pitchMm.u);
  expect(Math.abs(majorDiameterMm.value - screw.majorMm)).toBeLessThan(1.96 * majorDiameterMm.u);
  expect(correlation).toBeGreaterThan(0.8);
  expect(answer.notes).toContain('ruler-without-pose');

  const outside = await runCommand('measure', '--json', '--ruler', '0,0,9000,0,100', photo);
  expect(outside.code).toBe(0);
  expect(jsonLines(outside.out)[0]).toMatchObject({
    outcome: 'refused',
    refusal: { reason: 'no-card' },
  });
}, 120_000);
