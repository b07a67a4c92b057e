import { gaussLegendre } from '../../math/gaussLegendre.ts';
import { type PortEnd, type PortShape, portSectionM2 } from './portShape.ts';

const POINTS = 24;

/**
 * Mouth of a port whose end is rounded by a quarter circle of radius `flareM`: a tube grows by it all round, a slot on all four
 * sides, one along a wall not on that side (nor, in a corner, on the second one).
 *
 * Example: a 70 mm tube with 15 mm rounding ends in 100 mm.
 */
export const flaredMouth = (shape: PortShape, end: PortEnd, flareM: number): PortShape => {
  if (shape.kind === 'round') return { kind: 'round', diameterM: shape.diameterM + 2 * flareM };
  const { widthM, heightM } = shape;
  const alongWidth = widthM >= heightM;
  const acrossShort = end === 'on-wall' || end === 'in-corner' ? flareM : 2 * flareM;
  const acrossLong = end === 'in-corner' ? flareM : 2 * flareM;
  return {
    kind: 'slot',
    widthM: widthM + (alongWidth ? acrossLong : acrossShort),
    heightM: heightM + (alongWidth ? acrossShort : acrossLong),
  };
};

/**
 * Length of straight bore that has the mass of the air in a rounded end of depth `flareM`, m: ∫ S0/S(x) dx over the depth.
 *
 * Taken as a row of thin slices with even speed in each, which gives the least mass possible (the air does not follow so steep a
 * wall near the mouth): the true mass is up to about a fifth of the radius greater. A flare of radius 0 has length 0.
 * Source: derived here; slices as in Lord Rayleigh, Theory of Sound, 1896, section 305 (bounds, from memory).
 *
 * Example: 70 mm bore, 15 mm rounding: 12.4 mm instead of 15 mm
 */
export const flareBoreLengthM = (shape: PortShape, end: PortEnd, flareM: number): number => {
  if (flareM === 0) return 0;
  const boreM2 = portSectionM2(shape);
  const { nodes, weights } = gaussLegendre(POINTS);
  let sum = 0;
  for (let i = 0; i < POINTS; i++) {
    // Depth counted from the throat, flare · sin θ, so that the wall is smooth in θ.
    const angle = ((1 + nodes[i]!) * Math.PI) / 4;
    const section = portSectionM2(flaredMouth(shape, end, flareM * (1 - Math.cos(angle))));
    sum += ((weights[i]! * Math.PI) / 4) * (boreM2 / section) * Math.cos(angle);
  }
  return flareM * sum;
};
