import { type BafflePlace, type OpenBaffle, onBaffle } from './openBaffle.ts';

const RINGS = 12;
const SPOKES = 24;

/**
 * The length D of a dipole: at low frequencies a small driver of volume velocity U on a thin panel sounds like +U and −U that far apart.
 *
 * Round panel of radius b, driver at r0 from its centre: D = (4/π) √(b² − r0²), exact as ka → 0. Rectangle of sides w, h: at the
 * centre w h/√(w² + h²); elsewhere the geometric mean of two shapes between them, 4 √(q/(w² + h²)) and 2/√(1/p + 1/q') of the half
 * chords there (fitted here to a panel method: within 2 % at the centre, 8 % up to 0.8 of the way to a corner for sides of 1:1 to 1:4,
 * 12 % beyond). Off the panel: 0. m throughout.
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
  const product = (chordX * chordY) / Math.hypot(widthM, heightM);
  const harmonic = product === 0 ? 0 : (chordX * chordY) / Math.hypot(chordX, chordY);
  return Math.sqrt(product * harmonic);
};

/**
 * The same for a flat piston of radius `pistonRadiusM`: the mean over its face (a whole disc that moves: 8a/(3π) = 0.849 a).
 *
 * What of the piston hangs over the edge counts 0. Source: reciprocity, as `dipoleLengthM`.
 */
export const pistonDipoleLengthM = (baffle: OpenBaffle, place: BafflePlace, pistonRadiusM: number): number => {
  if (pistonRadiusM === 0) return dipoleLengthM(baffle, place);
  let sum = 0;
  for (let ring = 0; ring < RINGS; ring++) {
    // Rings crowd towards the rim, where the length falls with a square root.
    const u = (ring + 0.5) / RINGS;
    const radius = pistonRadiusM * Math.sqrt(1 - u ** 4);
    const share = (4 * u ** 3) / RINGS;
    for (let spoke = 0; spoke < SPOKES; spoke++) {
      const angle = (2 * Math.PI * (spoke + 0.5)) / SPOKES;
      const at = { xM: place.xM + radius * Math.cos(angle), yM: place.yM + radius * Math.sin(angle) };
      sum += (share / SPOKES) * dipoleLengthM(baffle, at);
    }
  }
  return sum / RING_SHARES;
};

let shares = 0;
for (let ring = 0; ring < RINGS; ring++) shares += (4 * ((ring + 0.5) / RINGS) ** 3) / RINGS;
const RING_SHARES = shares;
