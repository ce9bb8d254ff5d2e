import { sandwich } from './matrix';

/** Function of several inputs with several outputs: fills nothing, returns new values. */
export type Model = (x: Float64Array) => ArrayLike<number>;

export interface Propagated {
  readonly values: Float64Array;
  /** Σy = J·Σx·Jᵀ, m × m (JCGM 102:2011, 6.2; for one output JCGM 100:2008, 5.2.2). First order:
   *  right while the model is straight over a few u; monte-carlo.ts is the check. */
  readonly covariance: Float64Array;
  /** ∂y/∂x, m × n. */
  readonly jacobian: Float64Array;
}

/** The one way by which uncertainty travels. `sigma` is n × n. Central differences over ±0.01 u of
 *  each input; an input without uncertainty adds nothing, and its column of J is zero. */
export function propagate(
  model: Model,
  inputs: ArrayLike<number>,
  sigma: ArrayLike<number>,
): Propagated {
  const n = inputs.length;
  const x = Float64Array.from(inputs);
  const values = Float64Array.from(model(Float64Array.from(x)));
  const m = values.length;
  const jacobian = new Float64Array(m * n);
  for (let j = 0; j < n; j++) {
    const u = Math.sqrt(sigma[j * n + j]);
    if (!(u > 0)) continue;
    // Below rounding of the input itself no difference can be seen.
    const h = Math.max(0.01 * u, 1e-7 * Math.abs(x[j]) * Number(u < 1e-7 * Math.abs(x[j])));
    const at = Float64Array.from(x);
    at[j] = x[j] + h;
    const above = Float64Array.from(model(at));
    at[j] = x[j] - h;
    const below = model(Float64Array.from(at));
    for (let i = 0; i < m; i++) jacobian[i * n + j] = (above[i] - below[i]) / (2 * h);
  }
  return { values, covariance: sandwich(jacobian, sigma, m, n), jacobian };
}

/** Inputs that share one cause. */
export interface Source<Name extends string = string> {
  readonly name: Name;
  /** Indices into the inputs. */
  readonly inputs: readonly number[];
}

/** One standard uncertainty per source and output. The sources must be independent of each other:
 *  then the squares of a column add up to the variance. Correlation inside a source counts. */
export function budgetBySource<Name extends string>(
  { jacobian, values }: Propagated,
  sigma: ArrayLike<number>,
  sources: readonly Source<Name>[],
): { readonly name: Name; readonly u: Float64Array }[] {
  const m = values.length;
  const n = jacobian.length / m;
  return sources.map(({ name, inputs }) => {
    const k = inputs.length;
    const J = new Float64Array(m * k);
    const S = new Float64Array(k * k);
    for (const [a, j] of inputs.entries()) {
      for (let i = 0; i < m; i++) J[i * k + a] = jacobian[i * n + j];
      for (const [b, l] of inputs.entries()) S[a * k + b] = sigma[j * n + l];
    }
    const covariance = sandwich(J, S, m, k);
    return {
      name,
      u: Float64Array.from({ length: m }, (_, i) => Math.sqrt(covariance[i * m + i])),
    };
  });
}
