import { photoShape } from '../6-candidates/photo-likelihood';
import type { PriorOptions } from '../6-candidates/priors';
import type { Reading } from '../6-candidates/reading';
import { densityAtPlace, type Evidence, type Weighed, weigh } from '../6-candidates/weigh';
import type { Contradiction } from './decision';

/** A source is contradicted when its being mistaken explains the whole better than its being
 *  right. For a reading: the posterior share of its misread branch. For the photo: the likeliest
 *  thread lies this many (squared) standard uncertainties away. */
const misreadLimit = 0.5;
const photoLimit2 = 20;

export interface Agreement {
  readonly contradictions: readonly Contradiction[];
  /** Sources that agree with the likeliest thread, and could have disagreed. */
  readonly agreeing: number;
}

/** Weighed without a branch for being misread, or apart from the threads. */
const unweighed: ReadonlySet<Reading['kind']> = new Set(['marking', 'hand', 'hex', 'cannot-tell']);

const sayingLittle: ReadonlySet<Reading['kind']> = new Set([
  'taper',
  'flank',
  'crest-form',
  'end-type',
  'marking',
  'hand',
  'hex',
  'cannot-tell',
]);

/** Most threads would pass these: they cannot bear out one against another. */
function saysLittle(reading: Reading): boolean {
  return sayingLittle.has(reading.kind) || reading.text === 'none';
}

export function agreement(evidence: Evidence, options: PriorOptions, weighed: Weighed): Agreement {
  const contradictions: Contradiction[] = [];
  let agreeing = 0;
  evidence.readings.forEach((reading, index) => {
    // These have no misread branch: they weigh little as they are.
    if (unweighed.has(reading.kind)) return;
    const asMisread = weigh(evidence, options, index).total / weighed.total;
    if (asMisread > misreadLimit) {
      contradictions.push({ source: 'reading', index, text: `${reading.kind}=${reading.text}` });
    } else if (!saysLittle(reading)) {
      agreeing++;
    }
  });
  if (evidence.photo && evidence.readings.length > 0) {
    const distance2 = distanceToBest(evidence.photo, weighed);
    if (distance2 !== null && distance2 > photoLimit2) contradictions.push({ source: 'photo' });
    else agreeing++;
  }
  return { contradictions, agreeing };
}

function distanceToBest(photo: NonNullable<Evidence['photo']>, weighed: Weighed): number | null {
  const top = weighed.threads[0];
  if (!top || weighed.unlisted.weight > top.weight) return null;
  const { thread, end, density } = top.hypothesis;
  const place = densityAtPlace(thread, end, density, photo.middleFromEndMm);
  const shape = photoShape(photo);
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < place.weights.length; k++) {
    if (place.weights[k]! < 1e-4) continue;
    const mm = place.firstMm + k * place.stepMm;
    least = Math.min(least, shape.distance2(thread.pitchMm, mm));
  }
  return least;
}
