import {
  type Duct,
  ductAreaM2,
  ductSectionBetween,
  filledLineConstants,
  type LineConstants,
  lineConstants,
  type TwoPort,
  type ViscousAir,
} from '../../../../src/core/acoustics/index.ts';
import { add, type Complex, complex, multiply, scale } from '../../../../src/core/math/index.ts';

/** Air of the reference cases. */
export const STILL_AIR: ViscousAir = {
  densityKgPerM3: 1.2041,
  soundSpeedMPerS: 343.2,
  viscosityPaS: 1.81e-5,
  heatCapacityRatio: 1.401,
  prandtl: 0.71,
};

export const omegaOf = (hz: number): number => 2 * Math.PI * hz;

/** |a − b| over the larger of the two. */
export const apart = (a: Complex, b: Complex): number =>
  Math.hypot(a.re - b.re, a.im - b.im) / Math.max(Math.hypot(a.re, a.im), Math.hypot(b.re, b.im), 1e-300);

/** Line constants of a duct at a share of its length. */
export const constantsAlong =
  (duct: Duct, air: ViscousAir, omega: number) =>
  (share: number): LineConstants => {
    const section = duct.farSection ? ductSectionBetween(duct.section, duct.farSection, share) : duct.section;
    return duct.fluid
      ? filledLineConstants(ductAreaM2(section), duct.fluid(omega), omega)
      : lineConstants(section, air, omega);
  };

type State = readonly [Complex, Complex];

/** Two-port by Runge and Kutta's steps through dp/dx = −Z'U, dU/dx = −Y'p, from the far end to the near one: no slices, no functions of ΓL. */
export const integrated = (constants: (share: number) => LineConstants, lengthM: number, steps: number): TwoPort => {
  const h = lengthM / steps;
  const march = (start: State): State => {
    let state = start;
    const slope = ([p, u]: State, share: number): State => {
      const { series, shunt } = constants(share);
      return [multiply(series, u), multiply(shunt, p)];
    };
    const moved = ([p, u]: State, [dp, du]: State, by: number): State => [add(p, scale(dp, by)), add(u, scale(du, by))];
    for (let n = steps; n > 0; n--) {
      const [here, mid, next] = [n / steps, (n - 0.5) / steps, (n - 1) / steps];
      const k1 = slope(state, here);
      const k2 = slope(moved(state, k1, h / 2), mid);
      const k3 = slope(moved(state, k2, h / 2), mid);
      const k4 = slope(moved(state, k3, h), next);
      state = [k1, k2, k3, k4].reduce<State>(
        (sum, k, i) => moved(sum, k, (h * (i === 0 || i === 3 ? 1 : 2)) / 6),
        state,
      );
    }
    return state;
  };
  const [a, c] = march([complex(1), complex(0)]);
  const [b, d] = march([complex(0), complex(1)]);
  return { a, b, c, d };
};
