/** One measured figure, as `npm run bench -- --json FILE` writes it. */
export interface Figure {
  readonly id: string;
  /** null: it could not be measured. */
  readonly value: number | null;
  readonly unit: string;
  /** null: there is none, and `holds` is true. */
  readonly target: number | null;
  readonly better: 'higher' | 'lower';
  readonly holds: boolean;
}

/** What a part of the bench hands back: figures, and lines for a reader with spread, load and side figures. */
export interface Measured {
  readonly figures: readonly Figure[];
  readonly notes: readonly string[];
}

type Claim = Pick<Figure, 'id' | 'unit' | 'better' | 'target'>;

/** The stated aims: network sweep, whole evaluation, crossover search and builds, edit to paint, first picture. */
export const CLAIMS: readonly Claim[] = [
  { id: 'sweep-vs-ngspice-all', unit: 'times', better: 'higher', target: 200 },
  { id: 'sweep-vs-ngspice-four', unit: 'times', better: 'higher', target: 40 },
  { id: 'sweep-vs-mathjs', unit: 'times', better: 'higher', target: 5000 },
  { id: 'sweep-difference', unit: 'of the largest node voltage', better: 'lower', target: 1e-9 },
  { id: 'evaluation-median-ms', unit: 'ms', better: 'lower', target: 2 },
  { id: 'evaluation-p95-ms', unit: 'ms', better: 'lower', target: null },
  { id: 'optimise-s', unit: 's', better: 'lower', target: 2 },
  { id: 'optimise-vs-differences', unit: 'times', better: 'higher', target: null },
  { id: 'builds-s', unit: 's', better: 'lower', target: 2 },
  { id: 'builds-vs-simulation', unit: 'times', better: 'higher', target: null },
  { id: 'paint-median-ms', unit: 'ms', better: 'lower', target: 16.7 },
  { id: 'paint-p95-ms', unit: 'ms', better: 'lower', target: 33 },
  { id: 'first-picture-kb', unit: 'kB', better: 'lower', target: 200 },
];

/** A figure by its id, judged against its target; a value that is not finite counts as not measured. */
export function figure(id: string, measured: number | null): Figure {
  const claim = CLAIMS.find((one) => one.id === id);
  if (claim === undefined) throw new RangeError(`The bench states no figure ${id}.`);
  const value = measured !== null && Number.isFinite(measured) ? measured : null;
  const meets = (target: number): boolean =>
    value !== null && (claim.better === 'higher' ? value >= target : value <= target);
  const { unit, target, better } = claim;
  return { id, value, unit, target, better, holds: target === null ? true : meets(target) };
}
