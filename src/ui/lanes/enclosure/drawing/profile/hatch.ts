/** Strokes at 45 degrees across a rectangle, as the commands of one path: wood that is cut through. */
export function hatch(xPx: number, yPx: number, widthPx: number, heightPx: number, stepPx = 5): string {
  let d = '';
  for (let c = stepPx; c < widthPx + heightPx; c += stepPx) {
    const x0 = Math.max(0, c - heightPx);
    const x1 = Math.min(widthPx, c);
    d += `M${(xPx + x0).toFixed(1)},${(yPx + c - x0).toFixed(1)}L${(xPx + x1).toFixed(1)},${(yPx + c - x1).toFixed(1)}`;
  }
  return d;
}
