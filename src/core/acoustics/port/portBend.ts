import type { PortShape } from './portShape.ts';

/** Centre radius of a bought elbow in bore diameters (common practice, no source; half to one and a half are sold). */
const ELBOW_RADIUS_DIAMETERS = 1;

/** A slot's square corner holds the mass of 0.5587 of its height where the centre line counts one height: 1 − 2 ln 2/π. */
const MITRE_SHARE = 1 - (2 * Math.LN2) / Math.PI;

/**
 * What a smooth bend of a round tube takes off the length along its centre line, m (negative): the air keeps to the inner side.
 *
 * θ (R + √(R² − a²))/2 in place of θ R: speed as 1/r round the bend's centre, bends of any length without their ends.
 * `centreRadiusM` R at least the bore's radius a. Throws a RangeError below. Source: derived here; same class of result as
 * C. J. Nederveen, "Influence of a toroidal bend on wind instrument tuning", J. Acoust. Soc. Am. 104, 1998, 1616 (from memory).
 *
 * Example: 70 mm bore, R = 70 mm, a right angle: −7.4 mm
 */
export const smoothBendCorrectionM = (radiusM: number, centreRadiusM: number, angleRad: number): number => {
  if (!(centreRadiusM >= radiusM)) throw new RangeError('a bend cannot be tighter than its bore');
  return (angleRad * (Math.sqrt(centreRadiusM ** 2 - radiusM ** 2) - centreRadiusM)) / 2;
};

/**
 * What one right-angled bend takes off a port's length along the centre line, m (negative).
 *
 * A slot is taken to turn about its wider side with a sharp mitre: −(2 ln 2/π) of its smaller side, exact in two dimensions. A tube
 * is taken to turn through an elbow whose centre radius is one bore diameter: −0.21 radii of it, by `smoothBendCorrectionM`.
 * Low frequencies, no loss at the bend (a sharp mitre makes noise earlier). Source: the slot by conformal mapping of a corner, as
 * for the resistance of a bent strip (from memory; the test solves the corner on a grid).
 *
 * Example: a slot of 40 mm height: −17.7 mm
 */
export const bendCorrectionM = (shape: PortShape): number => {
  if (shape.kind === 'slot') return (MITRE_SHARE - 1) * Math.min(shape.widthM, shape.heightM);
  return smoothBendCorrectionM(shape.diameterM / 2, ELBOW_RADIUS_DIAMETERS * shape.diameterM, Math.PI / 2);
};
