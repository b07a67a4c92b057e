import type { SpeakerModel } from '../../speaker/model.ts';
import type { Build, Row } from './build.ts';
import { buildLayout } from './buildLayout.ts';
import { buildSolver } from './buildSolver.ts';
import { type Candidate, logsByKey } from './candidate.ts';
import type { Fault } from './fault.ts';
import { type Hypothesis, rebuilt } from './hypothesis.ts';
import { READABLE_OHM } from './impedanceData.ts';
import { unknownKey } from './unknown.ts';

/** One more measurement that a builder can make at home, as data. */
export type Measurement =
  /** Impedance at the terminals again, one driver's lead taken off. */
  | { readonly kind: 'driver-unplugged'; readonly partId: string }
  /** Impedance at a driver's own terminals, the amplifier's terminals open. */
  | { readonly kind: 'at-driver'; readonly partId: string }
  /** Impedance at the terminals again, the link between them taken off. */
  | { readonly kind: 'link-off'; readonly partId: string }
  /** Level with the microphone close before a cone, against other cones. */
  | { readonly kind: 'near-field'; readonly partId: string }
  /** Which way a cone moves when a small battery touches the terminals. */
  | { readonly kind: 'cone-direction'; readonly partId: string }
  /** A part's value with a meter, one leg lifted. */
  | { readonly kind: 'part-with-meter'; readonly partId: string }
  /** Whether an end of a part is joined to a node, with a meter that beeps. */
  | { readonly kind: 'continuity'; readonly partId: string; readonly end: 0 | 1; readonly node: string };

export interface NextMeasurement {
  readonly measurement: Measurement;
  /** Squared difference of the two best explanations in it, over its noise: 25 and more decides. */
  readonly difference: number;
}

/** Minutes of work (own estimate, no source). */
const MINUTES: Readonly<Record<Measurement['kind'], number>> = {
  'link-off': 3,
  'cone-direction': 4,
  continuity: 5,
  'driver-unplugged': 6,
  'at-driver': 8,
  'near-field': 10,
  'part-with-meter': 12,
};
const DECIDES = 25;
/** A direct look at the suspect. */
const CERTAIN = 1e4;
const NEAR_FIELD_DB = 0.5;

/**
 * The measurement that would best tell two explanations apart: of those that decide the quickest, else the one that differs most.
 * Each explanation keeps the values with which it explains what was measured.
 *
 * Source: A. C. Atkinson and V. V. Fedorov, "The design of experiments for discriminating between two rival models", Biometrika 62,
 * 1975 (from memory), without fitting the rival anew. Null where nothing tells them apart.
 */
export function nextMeasurement(
  first: Candidate,
  second: Candidate,
  base: Hypothesis,
  model: SpeakerModel,
  noise: number,
): NextMeasurement | null {
  const scored = measurementsFor(first, second, base.build).map((measurement) => ({
    measurement,
    difference: differenceIn(measurement, first, second, base, model, noise),
  }));
  const useful = scored.filter(({ difference }) => difference > 1);
  useful.sort((a, b) => {
    const deciding = Number(b.difference >= DECIDES) - Number(a.difference >= DECIDES);
    if (deciding !== 0) return deciding;
    return a.difference >= DECIDES
      ? MINUTES[a.measurement.kind] - MINUTES[b.measurement.kind]
      : b.difference - a.difference;
  });
  return useful[0] ?? null;
}

function measurementsFor(first: Candidate, second: Candidate, { parts, drivers }: Build): Measurement[] {
  const measurements: Measurement[] = [];
  for (const { part } of parts) if (part.kind === 'jumper') measurements.push({ kind: 'link-off', partId: part.id });
  for (const { partId, isOpen } of drivers) {
    if (isOpen) continue;
    if (drivers.length > 1) measurements.push({ kind: 'driver-unplugged', partId }, { kind: 'near-field', partId });
    measurements.push({ kind: 'at-driver', partId });
  }
  for (const fault of [...first.hypothesis.faults, ...second.hypothesis.faults])
    measurements.push(...directLook(fault, parts));
  return measurements;
}

function directLook(fault: Fault, parts: Build['parts']): Measurement[] {
  switch (fault.kind) {
    case 'part-open':
    case 'part-short':
    case 'part-value':
    case 'part-decade':
      return [{ kind: 'part-with-meter', partId: fault.partId }];
    case 'exchanged':
      return parts.some(({ part }) => part.id === fault.partIds[0])
        ? [{ kind: 'part-with-meter', partId: fault.partIds[0] }]
        : [];
    case 'wrong-node':
      return [{ kind: 'continuity', partId: fault.partId, end: fault.end, node: fault.node }];
    case 'driver-reversed':
      return [{ kind: 'cone-direction', partId: fault.partId }];
    default:
      return [];
  }
}

function differenceIn(
  measurement: Measurement,
  first: Candidate,
  second: Candidate,
  base: Hypothesis,
  model: SpeakerModel,
  noise: number,
): number {
  const { kind } = measurement;
  if (kind === 'part-with-meter' || kind === 'continuity' || kind === 'cone-direction') {
    const isOf = ({ hypothesis }: Candidate): boolean =>
      hypothesis.faults.some((fault) =>
        directLook(fault, base.build.parts).some((look) => JSON.stringify(look) === JSON.stringify(measurement)),
      );
    return isOf(first) === isOf(second) ? 0 : CERTAIN;
  }
  const [a, b] = [first, second].map((candidate) => read(measurement, candidate, base, model)) as [Row, Row];
  let sum = 0;
  if (kind === 'near-field') {
    const levels = ({ re, im }: Row): number[] =>
      Array.from(re, (x, f) => 20 * Math.log10(Math.max(1e-30, Math.hypot(x, im[f]!))));
    const [la, lb] = [levels(a), levels(b)];
    // Only below the pass of the cone's own size is the near field a piston's; a third of the sweep is taken for it.
    for (let f = 0; f < la.length; f += 3) sum += Math.min(144, ((la[f]! - lb[f]!) / NEAR_FIELD_DB) ** 2);
    return sum;
  }
  for (let f = 0; f < a.re.length; f++) {
    const sizes = [a, b].map(({ re, im }) =>
      Math.min(READABLE_OHM[1], Math.max(READABLE_OHM[0], Math.hypot(re[f]!, im[f]!))),
    );
    sum += Math.min(1e4, (Math.log(sizes[0]! / sizes[1]!) / noise) ** 2);
  }
  return sum;
}

/** What a measurement would read of a build: an impedance, or a cone's volume velocity per volt. */
function read(measurement: Measurement, candidate: Candidate, base: Hypothesis, model: SpeakerModel): Row {
  const built = rebuilt(base, candidate.hypothesis.faults, model);
  const known = logsByKey(candidate);
  const { partId, kind } = measurement;
  let { build } = built;
  if (kind === 'driver-unplugged') {
    build = { ...build, drivers: build.drivers.map((d) => (d.partId === partId ? { ...d, isOpen: true } : d)) };
  } else if (kind === 'link-off') {
    build = { ...build, parts: build.parts.map((p) => (p.part.id === partId ? { ...p, state: 'open' as const } : p)) };
  } else if (kind === 'at-driver') {
    build = { ...build, terminals: build.drivers.find((d) => d.partId === partId)!.nodes, cableOhm: 0 };
  }
  const solver = buildSolver(buildLayout(build, built.unknowns));
  const logs = Float64Array.from(built.unknowns, (unknown) => known.get(unknownKey(unknown)) ?? 0);
  const { z, flows } = solver.solve(logs, true);
  if (kind !== 'near-field') return { re: z.re, im: z.im };
  const flow = flows[build.drivers.findIndex((d) => d.partId === partId)]!;
  const re = new Float64Array(z.re.length);
  for (let f = 0; f < re.length; f++) re[f] = Math.hypot(flow.re[f]!, flow.im[f]!) / Math.hypot(z.re[f]!, z.im[f]!);
  return { re, im: new Float64Array(re.length) };
}
