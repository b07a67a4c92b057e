import { besselJ0, besselJ1 } from '../../math/bessel.ts';

/**
 * Far-field pressure of a flat round piston in an infinite baffle relative to its axis: D = 2 J1(x)/x, x = ka sin θ.
 *
 * Signed: negative in every other side lobe. Exact to 1e-15 for a rigid piston; a cone follows it up to about ka = 2.
 * Holds from about a²/λ outwards. Source: L. L. Beranek, T. J. Mellow, Acoustics, 2012, chapter 13.
 *
 * Example: pistonDirectivity(1.61633995) = 0.7071
 */
export const pistonDirectivity = (x: number): number => {
  const size = Math.abs(x);
  return size < 1e-8 ? 1 : (2 * besselJ1(size)) / size;
};

/** `pistonDirectivity` at an angle from the axis, radians. */
export const pistonDirectivityAt = (ka: number, angleRad: number): number => pistonDirectivity(ka * Math.sin(angleRad));

const STEPS_PER_UNIT = 16;
const TABLE_END = 64;
let table: Float64Array | null = null;

// Values and slopes (times the step) in turn; D' = −2 J2(x)/x.
const hermiteTable = (): Float64Array => {
  if (table) return table;
  const made = new Float64Array(2 * (TABLE_END * STEPS_PER_UNIT + 1));
  for (let i = 0; 2 * i < made.length; i++) {
    const x = i / STEPS_PER_UNIT;
    made[2 * i] = pistonDirectivity(x);
    made[2 * i + 1] = i === 0 ? 0 : ((-2 / x) * ((2 * besselJ1(x)) / x - besselJ0(x))) / STEPS_PER_UNIT;
  }
  table = made;
  return made;
};

/**
 * The same for a whole sweep: out[i] = D(scale · values[i]) to 1e-8, some 4 ns a value (cubic table up to x = 64).
 *
 * With angular frequencies as values, `scale` is a sin θ / c, seconds.
 */
export const pistonDirectivitiesInto = (out: Float64Array, values: Float64Array, scale: number): void => {
  const size = Math.abs(scale);
  if (size === 0) {
    out.fill(1);
    return;
  }
  const samples = hermiteTable();
  for (let i = 0; i < values.length; i++) {
    const x = values[i]! * size;
    if (x >= TABLE_END) {
      out[i] = pistonDirectivity(x);
      continue;
    }
    const place = x * STEPS_PER_UNIT;
    const at = Math.floor(place);
    const t = place - at;
    const v0 = samples[2 * at]!;
    const s0 = samples[2 * at + 1]!;
    const v1 = samples[2 * at + 2]!;
    const s1 = samples[2 * at + 3]!;
    const rise = v1 - v0;
    out[i] = v0 + t * (s0 + t * (3 * rise - 2 * s0 - s1 + t * (s0 + s1 - 2 * rise)));
  }
};
