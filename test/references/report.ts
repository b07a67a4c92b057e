import type { Json } from './adapter.ts';
import type { Outcome } from './harness.ts';

const KINDS = ['passed', 'failed', 'not covered'] as const;

const short = (value: Json | undefined): string => {
  const text = value === undefined ? 'nothing' : JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
};

/** How many leaves of one case are listed before the rest is summed up. */
const LEAVES_SHOWN = 6;

/** A table of the families, the failing leaves, and `N passed, N failed, N not covered` as the last line. */
export function report(outcomes: readonly Outcome[]): string {
  const families = [...new Set(outcomes.map((outcome) => outcome.family))];
  const count = (kind: Outcome['kind'], family?: string): number =>
    outcomes.filter((outcome) => outcome.kind === kind && (family === undefined || outcome.family === family)).length;

  const width = Math.max(6, ...families.map((family) => family.length));
  const row = (cells: readonly (string | number)[]): string =>
    cells.map((cell, i) => (i === 0 ? String(cell).padEnd(width) : String(cell).padStart(13))).join('');
  const lines = [row(['family', ...KINDS])];
  for (const family of families) lines.push(row([family, ...KINDS.map((kind) => count(kind, family))]));

  for (const outcome of outcomes) {
    if (outcome.kind !== 'failed') continue;
    lines.push(
      '',
      `${outcome.id} (${outcome.family}) failed${outcome.error === undefined ? '' : `: ${outcome.error}`}`,
    );
    for (const { leaf, expected, got, why } of outcome.mismatches.slice(0, LEAVES_SHOWN))
      lines.push(`  ${leaf}: expected ${short(expected)}, got ${short(got)} (${why})`);
    const rest = outcome.mismatches.length - LEAVES_SHOWN;
    if (rest > 0) lines.push(`  and ${rest} more`);
  }
  lines.push('', KINDS.map((kind) => `${count(kind)} ${kind}`).join(', '));
  return lines.join('\n');
}
