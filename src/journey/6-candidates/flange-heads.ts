import type { Connection } from '../../standards/connections/connection';
import { connections } from '../../standards/connections/connections';
import { lengthDensity, lengthUmm, misreadLengthDensity, misreadShare } from './reading-errors';
import { type ReadingModel, useFactor } from './reading-likelihood';

/** Ends without a thread: flange heads, known by diameter, thickness and bolts. */
export const flangeHeads: readonly Connection[] = connections.filter((c) => c.flangeHead !== null);

/** Heads are made to this, mm, besides what the instrument adds. */
const madeToMm = 0.15;
/** A blade or a taper is read from a head only by mistake. */
const mistaken = 0.002;

/** Chance of the readings, were the end this flange head. Photos show threads. */
export function headLikelihood(connection: Connection, models: readonly ReadingModel[]): number {
  const { diameterMm, thicknessMm, boltsMm } = connection.flangeHead!;
  let likelihood = 1;
  for (const model of models) {
    const { reading, misread } = model;
    const length = (mm: number, trueMm: number, uMm: number) =>
      (1 - misread) * (misread < 1 ? lengthDensity(mm, trueMm, uMm, model.stepMm) : 0) +
      misread * misreadLengthDensity(mm);
    switch (reading.kind) {
      case 'caliper-od':
      case 'rule-od':
        likelihood *= length(reading.mm, diameterMm, Math.hypot(lengthUmm[reading.kind], madeToMm));
        break;
      case 'flange-thickness':
        likelihood *= length(reading.mm, thicknessMm, lengthUmm[reading.kind]);
        break;
      case 'bolt-spacing':
        likelihood *= length(reading.mm, boltsMm[0], lengthUmm[reading.kind]);
        break;
      case 'caliper-id':
        likelihood *= misreadShare * misreadLengthDensity(reading.mm);
        break;
      case 'turns-over':
        likelihood *= mistaken * misreadLengthDensity(reading.overMm);
        break;
      case 'pitch-gauge':
      case 'flank':
      case 'crest-form':
      case 'taper':
        likelihood *= mistaken;
        break;
      case 'hex':
        likelihood *= misreadLengthDensity(reading.mm);
        break;
      default:
        likelihood *= useFactor(model, connection);
    }
    likelihood *= model.scale;
  }
  return likelihood;
}
