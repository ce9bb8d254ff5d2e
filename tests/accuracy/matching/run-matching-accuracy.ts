import { conclude } from '../../../src/journey/7-next-reading/conclude';
import { seededRandom } from '../../../src/quantity/random';
import { firstReadings } from './bench';
import { Calibration } from './calibration';
import { drawHydraulic, drawPlain, drawUnlisted } from './part';
import { photograph, qualities } from './photo';
import { type CaseRun, connectionVerdict, runCase, threadVerdict } from './run-case';

export interface MatchingArgs {
  readonly cases: number;
  readonly seed: number;
  /** Called with each case that was settled wrongly. */
  readonly onWrong?: (run: CaseRun, quality: string) => void;
}

export interface MatchingFigures {
  readonly cases: number;
  readonly threadSettled: number;
  readonly threadWrong: number;
  readonly connectionSettled: number;
  readonly connectionWrong: number;
  /** Cases settled wrongly, thread or connection, without a reading that was plain wrong,
   *  or a photo off by three times what it says. */
  readonly wrongUnmisled: number;
  /** Listed hydraulic threads at 0.3 % and 0.3 %, photo alone. */
  readonly photoAlone: number;
  readonly afterReadings: number;
  readonly meanReadings: number;
  readonly unlistedNotSettled: number;
  readonly unlistedNotSettledAfter: number;
  readonly unlistedCalled: number;
  readonly calibrationThread: Calibration;
  readonly calibrationConnection: Calibration;
  readonly secondsPer10k: number;
  readonly readingsAlone: ReadingsAlone;
}

export interface ReadingsAlone {
  readonly cases: number;
  readonly settled: number;
  readonly threadWrong: number;
  readonly connectionWrong: number;
  readonly meanReadings: number;
}

/** Simulated fittings through the matching core. Shares no likelihood code with it. */
export function matchingFigures({ cases, seed, onWrong }: MatchingArgs): MatchingFigures {
  const random = seededRandom(seed);
  const calibrationThread = new Calibration();
  const calibrationConnection = new Calibration();
  const count = {
    threadSettled: 0,
    threadWrong: 0,
    connectionSettled: 0,
    connectionWrong: 0,
    wrongUnmisled: 0,
    usual: 0,
    photoAlone: 0,
    hydraulic: 0,
    done: 0,
    readings: 0,
  };
  let concludeMs = 0;
  let concludes = 0;
  for (let i = 0; i < cases; i++) {
    const part =
      random.uniform() < 0.95 ? drawHydraulic(random, 'male') : drawPlain(random, 'male');
    const quality = qualities[i % qualities.length]!;
    const photo = photograph(part, quality, random);
    // Processor time: other work on the machine is no matter of the core's.
    const started = process.cpuUsage();
    const run = runCase(part, photo, random);
    const { user, system } = process.cpuUsage(started);
    concludeMs += (user + system) / 1000;
    concludes += 1 + run.readings.length;
    const before = threadVerdict(run.first, part);
    const thread = threadVerdict(run.last, part);
    const connection = connectionVerdict(run.last, part);
    if (thread !== 'open') count.threadSettled++;
    if (connection !== 'open') count.connectionSettled++;
    if (thread === 'wrong') count.threadWrong++;
    if (connection === 'wrong') count.connectionWrong++;
    if (thread === 'wrong' || connection === 'wrong') {
      onWrong?.(run, quality.name);
      if (!run.misled) count.wrongUnmisled++;
    }
    for (const stage of [run.first, run.last]) {
      for (const t of stage.threads.slice(0, 6)) {
        if (t.system !== null)
          calibrationThread.add(t.probability, t.designation === part.designation);
      }
      for (const c of stage.connections.slice(0, 6)) {
        const truth = part.connection;
        const right = c.family === truth?.family && c.size === truth.size;
        calibrationConnection.add(c.probability, right);
      }
    }
    if (part.kind !== 'hydraulic') continue;
    count.hydraulic++;
    count.readings += run.readings.length;
    if (thread === 'right' && connection === 'right') count.done++;
    if (quality.name === 'usual') {
      count.usual++;
      if (before === 'right') count.photoAlone++;
    }
  }
  return {
    cases,
    threadSettled: count.threadSettled,
    threadWrong: count.threadWrong,
    connectionSettled: count.connectionSettled,
    connectionWrong: count.connectionWrong,
    wrongUnmisled: count.wrongUnmisled,
    photoAlone: count.photoAlone / count.usual,
    afterReadings: count.done / count.hydraulic,
    meanReadings: count.readings / count.hydraulic,
    ...unlistedFigures(Math.ceil(cases / 5), seed + 2),
    calibrationThread,
    calibrationConnection,
    secondsPer10k: (concludeMs / concludes) * 10,
    readingsAlone: withoutPhoto(Math.ceil(cases / 10), seed + 1, onWrong),
  };
}

/** Threads in no table: from the photo alone, and after the readings asked for (every fourth). */
function unlistedFigures(cases: number, seed: number) {
  const random = seededRandom(seed);
  let open = 0;
  let called = 0;
  let followed = 0;
  let openAfter = 0;
  for (let i = 0; i < cases; i++) {
    const part = drawUnlisted(random);
    const photo = photograph(part, random.pick(qualities), random);
    const first = conclude(photo, []);
    if (threadVerdict(first, part) === 'open') open++;
    if (first.decision.state === 'unlisted') called++;
    if (i % 4 !== 0) continue;
    followed++;
    if (threadVerdict(runCase(part, photo, random).last, part) === 'open') openAfter++;
  }
  return {
    unlistedNotSettled: open / cases,
    unlistedCalled: called / cases,
    unlistedNotSettledAfter: openAfter / followed,
  };
}

/** At the counter, without a photo: crest diameter and pitch gauge first, then what is asked. */
function withoutPhoto(
  cases: number,
  seed: number,
  onWrong: MatchingArgs['onWrong'],
): ReadingsAlone {
  const random = seededRandom(seed);
  let settled = 0;
  let threadWrong = 0;
  let connectionWrong = 0;
  let readings = 0;
  for (let i = 0; i < cases; i++) {
    const end = random.uniform() < 0.5 ? 'male' : 'female';
    const part = drawHydraulic(random, end);
    const run = runCase(part, null, random, firstReadings(part, random));
    const thread = threadVerdict(run.last, part);
    const connection = connectionVerdict(run.last, part);
    if (thread === 'wrong') threadWrong++;
    if (connection === 'wrong') connectionWrong++;
    if (thread === 'wrong' || connection === 'wrong') onWrong?.(run, 'readings alone');
    if (thread === 'right' && connection === 'right') settled++;
    readings += 2 + run.readings.length;
  }
  return { cases, settled, threadWrong, connectionWrong, meanReadings: readings / cases };
}
