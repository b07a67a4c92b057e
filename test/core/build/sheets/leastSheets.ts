// The fewest sheets for a handful of parts that keep their orientation, from the top down: cut the board somewhere, share
// the parts out between the two sides, and so on. Sizes with the kerf added.

type Size = readonly [number, number];

function canCut(parts: readonly Size[], w: number, h: number): boolean {
  if (parts.some(([pw, ph]) => pw > w || ph > h)) return false;
  if (parts.length <= 1) return true;
  for (let share = 1; share < 2 ** (parts.length - 1); share++) {
    const near = parts.filter((_, i) => share & (1 << i));
    const far = parts.filter((_, i) => !(share & (1 << i)));
    for (let among = 1; among < 2 ** near.length; among++) {
      const chosen = near.filter((_, i) => among & (1 << i));
      const x = chosen.reduce((sum, [pw]) => sum + pw, 0);
      const y = chosen.reduce((sum, [, ph]) => sum + ph, 0);
      if (x < w && canCut(near, x, h) && canCut(far, w - x, h)) return true;
      if (y < h && canCut(near, w, y) && canCut(far, w, h - y)) return true;
    }
  }
  return false;
}

export function leastSheets(parts: readonly Size[], w: number, h: number): number {
  if (parts.length === 0) return 0;
  let least = parts.length;
  const [first, ...rest] = parts;
  for (let share = 0; share < 2 ** rest.length; share++) {
    const here = [first!, ...rest.filter((_, i) => share & (1 << i))];
    const others = rest.filter((_, i) => !(share & (1 << i)));
    if (canCut(here, w, h)) least = Math.min(least, 1 + leastSheets(others, w, h));
  }
  return least;
}
