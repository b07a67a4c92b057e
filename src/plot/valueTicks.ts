/** A line of a value axis. */
export interface ValueTick {
  readonly value: number;
  readonly label: string;
}

const STEPS = [1, 2, 5];

/**
 * Lines of a linear axis at the roundest step (1, 2 or 5 times a power of ten, or one of `steps`) that gives at most
 * `most` of them. Labels carry as many decimals as the step has.
 * Example: `valueTicks([50, 100], 11).map((t) => t.label)` gives `50 55 60 ... 100`.
 */
export function valueTicks(
  domain: readonly [number, number],
  most: number,
  steps?: readonly number[],
): readonly ValueTick[] {
  const [low, high] = domain;
  const step = roundestStep(high - low, Math.max(1, most - 1), steps);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks: ValueTick[] = [];
  for (let index = Math.ceil(low / step - 1e-9); index * step <= high + step * 1e-9; index++) {
    const value = Number((index * step).toFixed(decimals + 2));
    ticks.push({ value, label: value.toFixed(decimals).replace('-', '−') });
  }
  return ticks;
}

function roundestStep(span: number, intervals: number, steps: readonly number[] | undefined): number {
  const given = steps?.find((step) => span / step <= intervals + 1e-9);
  if (given !== undefined) return given;
  const least = span / intervals;
  const decade = 10 ** Math.floor(Math.log10(least));
  const multiple = STEPS.find((candidate) => candidate * decade >= least * (1 - 1e-9)) ?? 10;
  return multiple * decade;
}
