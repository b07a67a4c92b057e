import { complex } from '../../math/complex.ts';
import type { AirProperties } from '../airProperties.ts';
import type { TwoPort } from './twoPort.ts';

/**
 * A truncated cone without losses, from its near radius to its far one; widening or narrowing.
 *
 * x1 = r1 L/(r2 − r1), q = r2/r1: A = q cos kL − sin kL/(k x1), B = j(ρc/S2) q sin kL,
 * C = j(S1/ρc)[(q + 1/(k x1)²) sin kL − (L/x1) cos kL/(k x1)], D = (cos kL + sin kL/(k x1))/q. Areas are those of plane discs,
 * which holds while the half angle is below some 20°; exact for spherical waves on top of that. Equal radii: a plain tube.
 * Source: A. H. Benade, "Equivalent circuits for conical waveguides", J. Acoust. Soc. Am. 83, 1988, 1764 (form derived anew).
 *
 * Example: 30 to 50 mm radius, 0.25 m, 300 Hz: A = −0.1487.
 */
export const coneTwoPort = (
  cone: { readonly nearRadiusM: number; readonly farRadiusM: number; readonly lengthM: number },
  air: AirProperties,
  omega: number,
): TwoPort => {
  const { nearRadiusM, farRadiusM, lengthM } = cone;
  const k = omega / air.soundSpeedMPerS;
  const rhoC = air.densityKgPerM3 * air.soundSpeedMPerS;
  const nearAreaM2 = Math.PI * nearRadiusM ** 2;
  const farAreaM2 = Math.PI * farRadiusM ** 2;
  const q = farRadiusM / nearRadiusM;
  // 1/x1, not x1: it goes through 0 where the cone becomes a tube.
  const perX = (farRadiusM - nearRadiusM) / (nearRadiusM * lengthM);
  const slope = perX / k;
  const sine = Math.sin(k * lengthM);
  const cosine = Math.cos(k * lengthM);
  return {
    a: complex(q * cosine - slope * sine),
    b: complex(0, (rhoC / farAreaM2) * q * sine),
    c: complex(0, (nearAreaM2 / rhoC) * ((q + slope * slope) * sine - lengthM * perX * slope * cosine)),
    d: complex((cosine + slope * sine) / q),
  };
};
