/** What is written on a part in a drawing, and which way. */
export interface PartLabel {
  readonly lines: readonly string[];
  readonly upright: boolean;
}

/** Mean width of a character of the screen's type over its size: letters and figures of usual faces, a little on the wide side. */
const CHARACTER_SHARE = 0.58;
const LINE_SHARE = 1.25;

/**
 * The fullest label that fits into a rectangle, sizes in one unit: mark and name over the dimensions, then the mark with them, then the
 * mark alone, which always stands.
 * @example partLabel('A', 'left side', '940 × 340', 940, 340, 25).lines // ['A left side', '940 × 340']
 */
export function partLabel(
  mark: string,
  name: string,
  size: string,
  across: number,
  up: number,
  type: number,
): PartLabel {
  const wide = Math.max(across, up) - type * 0.6;
  const high = Math.min(across, up) - type * 0.3;
  const upright = up > across * 1.2;
  const fits = (lines: readonly string[]): boolean =>
    Math.max(...lines.map((line) => line.length)) * type * CHARACTER_SHARE <= wide &&
    lines.length * type * LINE_SHARE <= high;
  const choices = [[`${mark} ${name}`, size], [`${mark} ${name}, ${size}`], [mark, size], [`${mark} ${size}`]];
  const lines = choices.find(fits) ?? [mark];
  return { lines, upright: upright && lines[0] !== mark ? true : upright && lines.length > 1 };
}
