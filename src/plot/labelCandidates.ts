import type { Box, LabelField } from './labelField.ts';

const STRIDE_PX = 18;
const GAP_PX = 3;

/**
 * Places beside a curve where its name could stand: every eighteen pixels along it, just above and just below the stretch
 * that the text spans. Yields the middle of the text.
 */
export function* labelCandidates(
  field: LabelField,
  curve: number,
  size: { readonly widthPx: number; readonly heightPx: number },
  area: Box,
): Generator<{ readonly x: number; readonly y: number }> {
  const half = size.widthPx / 2;
  for (let x = area.left + half; x <= area.right - half; x += STRIDE_PX) {
    let highest = Number.POSITIVE_INFINITY;
    let lowest = Number.NEGATIVE_INFINITY;
    for (let at = x - half; at <= x + half; at += 6) {
      const y = field.heightAt(curve, at);
      if (y < highest) highest = y;
      if (y > lowest) lowest = y;
    }
    if (!Number.isFinite(highest)) continue;
    yield { x, y: highest - GAP_PX - size.heightPx / 2 };
    yield { x, y: lowest + GAP_PX + size.heightPx / 2 };
    // A steep stretch is named at its side instead, at the height of its middle.
    const middle = field.heightAt(curve, x);
    if (lowest - highest > 2 * size.heightPx && Number.isFinite(middle)) {
      yield { x: x + half + 2 * GAP_PX, y: middle };
      yield { x: x - half - 2 * GAP_PX, y: middle };
    }
  }
}
