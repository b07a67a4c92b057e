import { complex } from '../../math/complex.ts';
import type { AirProperties } from '../airProperties.ts';
import type { TwoPort } from './twoPort.ts';

/**
 * An exponential horn without losses: S(x) = S1 exp(mx), m = ln(S2/S1)/L.
 *
 * b = √(k² − m²/4), E = exp(mL/2): A = E(cos bL − (m/2b) sin bL), B = jωρ E sin bL/(S2 b), C = jωS1 E sin bL/(ρc² b),
 * D = (cos bL + (m/2b) sin bL)/E; below the cut-off mc/(4π) the functions turn hyperbolic. Plane waves (Webster's equation): good
 * while the radius is small against the wavelength. Source: A. G. Webster, Proc. Natl. Acad. Sci. 5, 1919, 275 (derived anew).
 *
 * Example: 40 to 200 cm², 1 m, 120 Hz: A = −1.803.
 */
export const exponentialTwoPort = (
  horn: { readonly nearAreaM2: number; readonly farAreaM2: number; readonly lengthM: number },
  air: AirProperties,
  omega: number,
): TwoPort => {
  const { nearAreaM2, farAreaM2, lengthM } = horn;
  const k = omega / air.soundSpeedMPerS;
  const halfFlare = Math.log(farAreaM2 / nearAreaM2) / (2 * lengthM);
  const square = k * k - halfFlare * halfFlare;
  const b = Math.sqrt(Math.abs(square));
  const angle = b * lengthM;
  const cosine = square >= 0 ? Math.cos(angle) : Math.cosh(angle);
  // sin(bL)/b, which is L at the cut-off itself.
  const sineOverB = angle < 1e-8 ? lengthM : (square >= 0 ? Math.sin(angle) : Math.sinh(angle)) / b;
  const growth = Math.exp(halfFlare * lengthM);
  const { densityKgPerM3: rho, soundSpeedMPerS: c } = air;
  return {
    a: complex(growth * (cosine - halfFlare * sineOverB)),
    b: complex(0, (omega * rho * growth * sineOverB) / farAreaM2),
    c: complex(0, (omega * nearAreaM2 * growth * sineOverB) / (rho * c * c)),
    d: complex((cosine + halfFlare * sineOverB) / growth),
  };
};
