import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { defaultOptions } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import { makePng } from './1-photo/make-files';

const photos = new URL('../../fixtures/photos/', import.meta.url);
const never = new AbortController().signal;

/** A rendered photo without its upper part, as somebody trims it before sending: the lens's centre is no longer the
 *  photo's, and nothing states a focal length. */
test.each([0.4, 0.3])(
  'a photo trimmed by %s of its height is measured within what it states',
  async (part) => {
    const truth = JSON.parse(readFileSync(new URL('d26.truth.json', photos), 'utf8'));
    const bytes = new Uint8Array(readFileSync(new URL('d26.jpg', photos)));
    const whole = await readPhoto(never, bytes, nodeDecoders);
    if (!whole.ok) throw new Error(whole.reason);
    const { width, height, data } = whole.value.grey;
    const from = Math.round(part * height);
    const trimmed = { width, height: height - from, data: data.slice(from * width) };
    const answer = await identifyPhoto(
      never,
      makePng(trimmed),
      defaultOptions,
      { vision: await loadNodeVision(), decoders: nodeDecoders },
      () => {},
    );
    if (answer.outcome !== 'measured') throw new Error(answer.refusal.reason);
    const { pitchMm, majorDiameterMm } = answer.measurement;
    const major = (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 2;
    expect(Math.abs(pitchMm.value / truth.pitch_mm - 1)).toBeLessThan(0.02);
    expect(Math.abs(pitchMm.value - truth.pitch_mm)).toBeLessThan(2 * pitchMm.u);
    expect(Math.abs(majorDiameterMm.value / major - 1)).toBeLessThan(0.02);
    expect(Math.abs(majorDiameterMm.value - major)).toBeLessThan(2 * majorDiameterMm.u);
  },
  60_000,
);
