import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { loadNodeVision } from '../../../src/cli/node-vision';
import { defaultOptions } from '../../../src/journey/identification';
import { identifyPhoto } from '../../../src/journey/identify';
import { screenCheck } from '../../../src/ui/reference/screen-size';

/** A photo of a card of half the size from half as far away is the same photo: everything on it is half as large.
 *  d15 is a render, no photograph. At half its size its pitch is still a usual one beside its diameter: which period is
 *  likeliest goes by that too. */
it('a card shown at half its size makes everything half as large, and as well known', async () => {
  const bytes = new Uint8Array(
    readFileSync(new URL('../../../fixtures/photos/d15.jpg', import.meta.url)),
  );
  const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
  const [whole, half] = await Promise.all(
    [1, 0.5].map(async (share) => {
      const { horizontalMm, verticalMm, uMm } = screenCheck('', share);
      const answer = await identifyPhoto(
        new AbortController().signal,
        bytes,
        { ...defaultOptions, bars: { horizontalMm, verticalMm, uMm } },
        tools,
        () => {},
      );
      if (answer.outcome === 'refused') throw new Error(answer.refusal.advice);
      return answer.measurement;
    }),
  );
  expect(half!.pitchMm.value / whole!.pitchMm.value).toBeCloseTo(0.5, 3);
  expect(half!.majorDiameterMm.value / whole!.majorDiameterMm.value).toBeCloseTo(0.5, 3);
  const relative = (m: typeof whole) => m!.pitchMm.u / m!.pitchMm.value;
  // The slider's 0.3 % and the glass's 0.3 % are in it (screen-size.ts).
  expect(relative(whole)).toBeGreaterThan(0.0042);
  expect(Math.abs(relative(half) / relative(whole) - 1)).toBeLessThan(0.15);
});
