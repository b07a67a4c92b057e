import { gaussLegendre } from '../../math/gaussLegendre.ts';
import { type BafflePlace, type OpenBaffle, onBaffle } from './openBaffle.ts';

const RINGS = 12;
const SPOKES = 24;

/**
 * The length D of a dipole: at low frequencies a small driver of volume velocity U on a thin panel sounds like +U and −U that far apart.
 *
 * Round panel of radius b, driver at r0 from its centre: D = (4/π) √(b² − r0²), exact as ka → 0. Rectangle: with the shortened sides
 * X, Y = √(w² − 4x²) and √(h² − 4y²), D = H^t P^(1 − t) with H = XY/√(X² + Y²), P = XY/√(w² + h²) and
 * t = 0.28 + 0.2 log2(longer/shorter side), at most 1: ours, fitted to a panel method for sides of 1:1 to 1:6, within 1 % at the centre and
 * 5 % up to 0.85 of the way to the edges (towards a corner worse, where D vanishes). Off the panel: 0. m throughout.
 * Source: potential flow through a thin disc (H. Lamb, Hydrodynamics, 1932, section 102, from memory) with reciprocity; derived.
 *
 * Example: dipoleLengthM({ kind: 'round', radiusM: 0.25 }, { xM: 0, yM: 0 }) = 0.318
 */
export const dipoleLengthM = (baffle: OpenBaffle, place: BafflePlace): number => {
  if (!onBaffle(baffle, place)) return 0;
  if (baffle.kind === 'round') return (4 / Math.PI) * Math.sqrt(baffle.radiusM ** 2 - place.xM ** 2 - place.yM ** 2);
  const { widthM, heightM } = baffle;
  const chordX = Math.sqrt(widthM ** 2 - 4 * place.xM ** 2);
  const chordY = Math.sqrt(heightM ** 2 - 4 * place.yM ** 2);
  if (chordX === 0 || chordY === 0) return 0;
  const harmonic = (chordX * chordY) / Math.hypot(chordX, chordY);
  const product = (chordX * chordY) / Math.hypot(widthM, heightM);
  const share = Math.min(1, 0.28 + 0.2 * Math.abs(Math.log2(widthM / heightM)));
  return harmonic ** share * product ** (1 - share);
};

/**
 * The same for a flat piston of radius `pistonRadiusM`: the mean over its face (a whole disc that moves: 8a/(3π) = 0.849 a).
 *
 * What of the piston hangs over the edge counts 0. Source: reciprocity, as `dipoleLengthM`.
 */
export const pistonDipoleLengthM = (baffle: OpenBaffle, place: BafflePlace, pistonRadiusM: number): number => {
  if (pistonRadiusM === 0) return dipoleLengthM(baffle, place);
  const { nodes, weights } = gaussLegendre(RINGS);
  let sum = 0;
  for (let ring = 0; ring < RINGS; ring++) {
    // Rings crowd towards the rim, where the length falls with a square root.
    const u = (1 + nodes[ring]!) / 2;
    const radius = pistonRadiusM * Math.sqrt(1 - u ** 4);
    const share = 2 * weights[ring]! * u ** 3;
    for (let spoke = 0; spoke < SPOKES; spoke++) {
      const angle = (2 * Math.PI * (spoke + 0.5)) / SPOKES;
      const at = { xM: place.xM + radius * Math.cos(angle), yM: place.yM + radius * Math.sin(angle) };
      sum += (share / SPOKES) * dipoleLengthM(baffle, at);
    }
  }
  return sum;
};
