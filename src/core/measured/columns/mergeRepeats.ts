/** One point of a curve with the line it was read from. */
export interface CurvePoint {
  readonly line: number;
  readonly frequencyHz: number;
  readonly magnitude: number;
  readonly phaseDeg: number;
}

const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;

/** Mean of angles near to each other, taken as the shortest way from the first. */
const meanAngleDeg = (degrees: readonly number[]): number => {
  const first = degrees[0]!;
  return first + mean(degrees.map((d) => d - first - 360 * Math.round((d - first) / 360)));
};

/** Puts the mean in the place of points of one frequency; `points` ascending. */
export function mergeRepeats(points: readonly CurvePoint[]): readonly CurvePoint[] {
  const merged: CurvePoint[] = [];
  for (let i = 0; i < points.length; ) {
    let end = i + 1;
    while (end < points.length && points[end]!.frequencyHz === points[i]!.frequencyHz) end++;
    const alike = points.slice(i, end);
    merged.push(
      alike.length === 1
        ? alike[0]!
        : {
            ...alike[0]!,
            magnitude: mean(alike.map((p) => p.magnitude)),
            phaseDeg: meanAngleDeg(alike.map((p) => p.phaseDeg)),
          },
    );
    i = end;
  }
  return merged;
}
