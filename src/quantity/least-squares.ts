import { invertSymmetric, solveSymmetric } from './matrix';
import * as portable from './portable-math';

/** Levenberg–Marquardt for small dense problems: minimises ½ Σ ρ(rᵢ(p)²).
 *  Noise model: the caller divides every residual by its own standard uncertainty, so that r is
 *  dimensionless and of order 1; a prior is one more residual, (p − expected)/u. Nothing is scaled
 *  here. Correlated errors must be whitened by the caller or enter as a shared parameter with a
 *  prior: n rows that share one error would otherwise shrink it by √n. */
export interface LeastSquaresProblem {
  readonly parameters: ArrayLike<number>;
  /** Number of residuals, priors included. */
  readonly count: number;
  /** Fills `out` for parameters `p`; must not keep either. NaN rejects the step. */
  readonly residuals: (p: Float64Array, out: Float64Array) => void;
  /** Column-wise: out[j · count + i] = ∂rᵢ/∂pⱼ. Central differences when absent. */
  readonly jacobian?: (p: Float64Array, out: Float64Array) => void;
  /** Half-widths of the central differences, in each parameter's unit;
   *  10⁻⁶·max(0.01, |p|) when absent. */
  readonly steps?: ArrayLike<number>;
  /** Huber: linear beyond `lossScale`; Cauchy: logarithmic. Applied to each residual alone. */
  readonly loss?: 'none' | 'huber' | 'cauchy';
  /** In units of σ, like the residuals. */
  readonly lossScale?: number;
  /** How many residuals, from the first, the loss is for; priors behind them stay quadratic. */
  readonly lossCount?: number;
  readonly maxIterations?: number;
  /** Converged when the next step would lower the cost by less than this share of it; 10⁻¹⁰. */
  readonly tolerance?: number;
}

/** - `converged`: the next step would lower the cost by less than `tolerance` of it. Parameters and
 *    covariance hold, near this minimum; another start may find a deeper one.
 *  - `no-progress`: no step lowers the cost although the model promises it: differences too
 *    coarse or a kink. Parameters are usually as good as they get.
 *  - `max-iterations`: still improving; trust neither parameters nor covariance.
 *  - `failed`: residuals not finite at the start. Nothing holds. */
export type Termination = 'converged' | 'no-progress' | 'max-iterations' | 'failed';

export interface LeastSquaresResult {
  readonly parameters: Float64Array;
  /** (JᵀWJ)⁻¹, n × n, W the loss's weights at the solution; NaN throughout when some combination of
   *  parameters is not determined. True only as far as the residuals' σ are: it is not multiplied
   *  by cost / (count − n); compare them, and widen in the caller if they disagree. */
  readonly covariance: Float64Array;
  /** ½ Σ ρ; about (count − n)/2 when the σ are true and nothing is an outlier. */
  readonly cost: number;
  readonly termination: Termination;
}

export function leastSquares(problem: LeastSquaresProblem): LeastSquaresResult {
  const n = problem.parameters.length;
  const m = problem.count;
  const loss = lossOf(problem.loss ?? 'none', problem.lossScale ?? 1, problem.lossCount ?? m);
  let p = Float64Array.from(problem.parameters);
  let q = new Float64Array(n);
  let r = new Float64Array(m);
  let trial = new Float64Array(m);
  const J = new Float64Array(n * m);
  const A = new Float64Array(n * n);
  const g = new Float64Array(n);
  const damped = new Float64Array(n * n);
  const differentiate = problem.jacobian ?? centralDifferences(problem);

  problem.residuals(p, r);
  let cost = loss.cost(r);
  let lambda = 1e-4;
  let raise = 4;
  let iterations = 0;
  let termination: Termination = Number.isFinite(cost) ? 'max-iterations' : 'failed';
  if (termination !== 'failed') {
    differentiate(p, J);
    normalEquations(J, r, loss.weight, A, g);
  }
  const most = problem.maxIterations ?? 50;
  while (termination === 'max-iterations' && iterations < most) {
    iterations++;
    damped.set(A);
    for (let a = 0; a < n; a++) {
      const diagonal = A[a * n + a];
      // A parameter without any effect gets a unit so that it stays where it is.
      damped[a * n + a] = diagonal > 0 ? diagonal * (1 + lambda) : 1;
    }
    const step = solveSymmetric(damped, g, n);
    let promised = 0;
    if (step) {
      for (let a = 0; a < n; a++) {
        q[a] = p[a] + step[a];
        promised += 0.5 * step[a] * (g[a] + lambda * A[a * n + a] * step[a]);
      }
      problem.residuals(q, trial);
    }
    const trialCost = step ? loss.cost(trial) : Number.NaN;
    const gain = cost - trialCost;
    const small = (problem.tolerance ?? 1e-10) * Math.max(cost, Number.MIN_VALUE);
    if (gain >= 0) {
      [p, q] = [q, p];
      [r, trial] = [trial, r];
      cost = trialCost;
      // Nielsen's rule: damping follows how well the quadratic model foretold the gain.
      const ratio = promised > 0 ? gain / promised : 1;
      lambda = Math.max(1e-15, lambda * Math.max(1 / 8, 1 - cube(2 * ratio - 1)));
      raise = 4;
      differentiate(p, J);
      normalEquations(J, r, loss.weight, A, g);
      if (gain <= small && (promised <= 2 * small || lambda <= 1e-3)) termination = 'converged';
    } else if (step && promised <= small) {
      termination = 'converged';
    } else {
      lambda = Math.max(lambda, 1e-10) * raise;
      raise *= 2;
      if (lambda > 1e14) termination = 'no-progress';
    }
  }
  const covariance =
    (termination !== 'failed' && invertSymmetric(A, n)) || new Float64Array(n * n).fill(Number.NaN);
  return { parameters: p, covariance, cost, termination };
}

interface Loss {
  /** ½ Σ ρ. */
  readonly cost: (r: Float64Array) => number;
  /** ρ′: the weight of a residual in the normal equations. */
  readonly weight: ((r: number, i: number) => number) | null;
}

function lossOf(kind: 'none' | 'huber' | 'cauchy', s: number, count: number): Loss {
  const half = (rho: (r: number) => number) => (r: Float64Array) => {
    let sum = 0;
    for (let i = 0; i < r.length; i++) sum += i < count ? rho(r[i]) : r[i] * r[i];
    return sum / 2;
  };
  if (kind === 'huber')
    return {
      cost: half((r) => (Math.abs(r) <= s ? r * r : 2 * s * Math.abs(r) - s * s)),
      weight: (r, i) => (i >= count || Math.abs(r) <= s ? 1 : s / Math.abs(r)),
    };
  if (kind === 'cauchy')
    return {
      cost: half((r) => s * s * portable.log1p((r / s) ** 2)),
      weight: (r, i) => (i >= count ? 1 : 1 / (1 + (r / s) ** 2)),
    };
  return { cost: half((r) => r * r), weight: null };
}

function centralDifferences({ count: m, residuals, steps, parameters }: LeastSquaresProblem) {
  const n = parameters.length;
  const at = new Float64Array(n);
  const above = new Float64Array(m);
  const below = new Float64Array(m);
  return (p: Float64Array, J: Float64Array) => {
    for (let j = 0; j < n; j++) {
      const h = steps?.[j] ?? 1e-6 * Math.max(1e-2, Math.abs(p[j]));
      at.set(p);
      at[j] = p[j] + h;
      residuals(at, above);
      at[j] = p[j] - h;
      residuals(at, below);
      for (let i = 0; i < m; i++) J[j * m + i] = (above[i] - below[i]) / (2 * h);
    }
  };
}

/** A = JᵀWJ and g = −JᵀWr. */
function normalEquations(
  J: Float64Array,
  r: Float64Array,
  weight: Loss['weight'],
  A: Float64Array,
  g: Float64Array,
): void {
  const m = r.length;
  const n = g.length;
  const w = weight && r.map(weight);
  const weighted = new Float64Array(m);
  for (let a = 0; a < n; a++) {
    const column = J.subarray(a * m, (a + 1) * m);
    for (let i = 0; i < m; i++) weighted[i] = w ? w[i] * column[i] : column[i];
    let down = 0;
    for (let i = 0; i < m; i++) down -= weighted[i] * r[i];
    g[a] = down;
    for (let b = 0; b <= a; b++) {
      const other = b * m;
      let s = 0;
      for (let i = 0; i < m; i++) s += weighted[i] * J[other + i];
      A[a * n + b] = s;
      A[b * n + a] = s;
    }
  }
}

/** Not `** 3`, whose last bit is the engine's. */
const cube = (x: number): number => x * x * x;
