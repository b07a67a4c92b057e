export interface FitParameter {
  readonly start: number;
  readonly least: number;
  readonly greatest: number;
  /** 'log': the search walks in ln p (p, bounds above 0), and deviations are relative; 'linear': in p itself. */
  readonly scale: 'log' | 'linear';
  /** For a linear one whose start says nothing of its size (as 0): what counts as a large change; absent: |start|. */
  readonly size?: number;
}

export interface LeastSquaresTask {
  readonly parameters: readonly FitParameter[];
  /** Number of residuals, at least that of the parameters. */
  readonly count: number;
  /** Writes all residuals for these values; a number that is not finite makes the search turn back. */
  readonly residualsInto: (out: Float64Array, values: Float64Array) => void;
  /**
   * What the covariance takes for the residuals' variance: 'estimated' from the sum of squares (also where absent); 'known': 1, they are
   * in units of their deviation; 'at-least-known': the larger of the two.
   */
  readonly variance?: 'estimated' | 'known' | 'at-least-known';
}

const STEP = 1e-6;

/** JᵀJ, rows one after another, and Jᵀr. */
export interface Normal {
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
}

/** Jacobian by walked coordinates, column after column. */
export function slopes({ parameters, count, residualsInto }: LeastSquaresTask, values: Float64Array): Float64Array {
  const n = parameters.length;
  const jacobian = new Float64Array(n * count);
  const at = Float64Array.from(values);
  const above = new Float64Array(count);
  const below = new Float64Array(count);
  for (let j = 0; j < n; j++) {
    const { scale, start, size = 0 } = parameters[j]!;
    const value = values[j]!;
    const width = scale === 'log' ? STEP : STEP * Math.max(Math.abs(value), Math.abs(start), size, 1e-12);
    at[j] = scale === 'log' ? value * Math.exp(width) : value + width;
    residualsInto(above, at);
    at[j] = scale === 'log' ? value * Math.exp(-width) : value - width;
    residualsInto(below, at);
    at[j] = value;
    for (let i = 0; i < count; i++) {
      const rise = (above[i]! - below[i]!) / (2 * width);
      jacobian[j * count + i] = Number.isFinite(rise) ? rise : 0;
    }
  }
  return jacobian;
}

export function normalEquations(jacobian: Float64Array, residuals: Float64Array, n: number): Normal {
  const count = residuals.length;
  const matrix = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  for (let a = 0; a < n; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0;
      for (let i = 0; i < count; i++) sum += jacobian[a * count + i]! * jacobian[b * count + i]!;
      matrix[a * n + b] = sum;
      matrix[b * n + a] = sum;
    }
    let sum = 0;
    for (let i = 0; i < count; i++) sum += jacobian[a * count + i]! * residuals[i]!;
    gradient[a] = sum;
  }
  return { matrix, gradient };
}
