/** Takes the jumps of 2π out of a list of angles, in place; the first stays. Radians. */
export function unwrapInPlace(phasesRad: Float64Array): void {
  let turns = 0;
  for (let i = 1; i < phasesRad.length; i++) {
    const step = phasesRad[i]! + turns - phasesRad[i - 1]!;
    turns -= 2 * Math.PI * Math.round(step / (2 * Math.PI));
    phasesRad[i] = phasesRad[i]! + turns;
  }
}
