/**
 * Frequencies from `fromHz` to at most `toHz`, `perOctave` to the octave, evenly in ln f, both above 0 and in order (throws otherwise).
 *
 * The grid hangs on 1 kHz, so that two grids share their points: each is 1000·2^(k/perOctave), k whole.
 * Example: logGrid(20, 20000, 24) has 239 points.
 */
export function logGrid(fromHz: number, toHz: number, perOctave: number): Float64Array {
  if (!(fromHz > 0 && toHz >= fromHz && perOctave > 0)) throw new RangeError('A grid runs upwards from above 0.');
  const first = Math.ceil(perOctave * Math.log2(fromHz / 1000) - 1e-9);
  const last = Math.floor(perOctave * Math.log2(toHz / 1000) + 1e-9);
  return Float64Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => 1000 * 2 ** ((first + k) / perOctave));
}
