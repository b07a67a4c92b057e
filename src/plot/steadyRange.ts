type Range = readonly [number, number];

/**
 * Keeps an axis still: the present range stays as long as the wanted one differs by no more than `slack` of its span at
 * either end, and always while `held` (a hand is on something). So a curve that hovers about a threshold does not make
 * the axis jump to and fro.
 * Example: `steadyRange([45, 95], [50, 100], 0.1, false)` is `[45, 95]`; with `[60, 110]` it is `[60, 110]`.
 */
export function steadyRange(present: Range | null, wanted: Range, slack: number, held: boolean): Range {
  if (present === null) return wanted;
  if (held) return present;
  const allowed = slack * (present[1] - present[0]) * (1 + 1e-9);
  const near = Math.abs(wanted[0] - present[0]) <= allowed && Math.abs(wanted[1] - present[1]) <= allowed;
  return near ? present : wanted;
}
