/** A line of a frequency axis; `label` is empty for a line that only divides. */
export interface FrequencyTick {
  readonly hz: number;
  readonly label: string;
}

const LABELLED = [1, 2, 5];
/** Width of `10k` with a little air. */
const LEAST_FROM_END_PX = 28;

/**
 * Lines of a logarithmic frequency axis: one at every whole multiple 1 to 9 of a decade, labelled at 1, 2 and 5 in the
 * way of the audio trade (`20`, `500`, `1k`, `20k`). Where decades are narrower than `decadePx` pixels allow for three
 * labels, only the decades themselves are labelled, and the ends of the axis; one that would touch an end's is left out.
 * Example: `frequencyTicks([20, 20000], 300).filter((t) => t.label).map((t) => t.label)` gives
 * `20 50 100 200 500 1k 2k 5k 10k 20k`.
 */
export function frequencyTicks(domainHz: readonly [number, number], decadePx: number): readonly FrequencyTick[] {
  const [low, high] = domainHz;
  const labelled = decadePx >= 96 ? LABELLED : [1];
  const ticks: FrequencyTick[] = [];
  for (let exponent = Math.floor(Math.log10(low)); 10 ** exponent <= high; exponent++) {
    for (let multiple = 1; multiple <= 9; multiple++) {
      const hz = Number((multiple * 10 ** exponent).toPrecision(1));
      if (hz < low || hz > high) continue;
      const end = hz === low || hz === high;
      const fromEndPx = decadePx * Math.min(Math.log10(hz / low), Math.log10(high / hz));
      const named = end || (labelled.includes(multiple) && fromEndPx >= LEAST_FROM_END_PX);
      ticks.push({ hz, label: named ? shortHz(hz) : '' });
    }
  }
  return ticks;
}

const shortHz = (hz: number): string => (hz >= 1000 ? `${hz / 1000}k` : `${hz}`);
