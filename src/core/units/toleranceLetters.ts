/**
 * Symmetrical tolerances in percent by their letter.
 *
 * Source: IEC 60062:2016; F and K looked up in an encyclopedia article, the others from memory.
 */
export const TOLERANCE_LETTERS: ReadonlyMap<string, number> = new Map([
  ['E', 0.005],
  ['L', 0.01],
  ['P', 0.02],
  ['W', 0.05],
  ['B', 0.1],
  ['C', 0.25],
  ['D', 0.5],
  ['F', 1],
  ['G', 2],
  ['H', 3],
  ['J', 5],
  ['K', 10],
  ['M', 20],
  ['N', 30],
]);
