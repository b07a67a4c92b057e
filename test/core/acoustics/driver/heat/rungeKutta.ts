/** Classical fourth-order Runge-Kutta over equal steps: an independent way through a heat network. */
export function rungeKutta(
  slopes: (state: readonly number[]) => readonly number[],
  start: readonly number[],
  timeS: number,
  steps: number,
): number[] {
  const h = timeS / steps;
  const moved = (state: readonly number[], by: readonly number[], share: number): number[] =>
    state.map((x, i) => x + share * h * by[i]!);
  let state = [...start];
  for (let step = 0; step < steps; step++) {
    const a = slopes(state);
    const b = slopes(moved(state, a, 0.5));
    const c = slopes(moved(state, b, 0.5));
    const d = slopes(moved(state, c, 1));
    state = state.map((x, i) => x + (h / 6) * (a[i]! + 2 * b[i]! + 2 * c[i]! + d[i]!));
  }
  return state;
}
