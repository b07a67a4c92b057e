import { gaussLegendre } from '../../math/gaussLegendre.ts';
import { endCorrectionM } from './endCorrection.ts';
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
 * Length of straight bore that has the mass of the air in a rounded end of depth `flareM`, m, to be taken with the end correction of
 * the mouth: ∫ S0/S(x) dx over the depth, and 0.974 (δ/a) r/(1 + 2.4 r/a) for what that leaves out, δ the sharp end's correction.
 *
 * The integral alone takes even speed in each thin slice, which gives the least mass possible: the air does not follow so steep a
 * wall near the mouth. The second term is fitted to a field solution of the flanged round end (a the bore's radius, r/a from 0.1
 * to 1.5: within 0.01 a); for a slot, with a of the circle of equal area, and for other ends it is an estimate.
 * Source: derived here; slices as in Lord Rayleigh, Theory of Sound, 1896, section 305 (bounds, from memory).
 *
 * Example: 70 mm bore, 15 mm rounding: 18.8 mm; with the mouth's end correction 4.9 mm less in all than a flush sharp end
 */
export const flareBoreLengthM = (shape: PortShape, end: PortEnd, flareM: number): number => {
  if (flareM === 0) return 0;
  const radiusM = Math.sqrt(portSectionM2(shape) / Math.PI);
  const share = (0.974 * endCorrectionM(shape, end)) / radiusM;
  return slicedLengthM(shape, end, flareM) + (share * flareM) / (1 + (2.4 * flareM) / radiusM);
};

/** The integral alone: a lower bound, m. */
const slicedLengthM = (shape: PortShape, end: PortEnd, flareM: number): number => {
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
