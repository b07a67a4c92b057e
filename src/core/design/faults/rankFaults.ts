import { chiSquareTail } from '../../math/chiSquareTail.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { atFrequencies } from './atFrequencies.ts';
import { type Candidate, fitHypothesis, logsByKey, logWorth, solverOf } from './candidate.ts';
import { type Fault, placesOf } from './fault.ts';
import { type FaultPriors, faultPriors } from './faultPriors.ts';
import { type Hypothesis, rebuilt, withFault } from './hypothesis.ts';
import { atPlaces, evenly, type ImpedanceData, READABLE_OHM } from './impedanceData.ts';
import { singleFaults } from './singleFaults.ts';

export interface RankedFaults {
  /** Fitted to all points, most likely first; the healthy build is among them. */
  readonly candidates: readonly Candidate[];
  /** Faults that change the impedance by less than the noise, so that it cannot tell. */
  readonly invisible: readonly Fault[];
  /** Probability that readings of the best candidate miss by so much by chance. */
  readonly chance: number;
  readonly wasStopped: boolean;
}

export interface RankOptions {
  /** From 0 to 1. */
  readonly onProgress: (share: number) => void;
  readonly shouldStop: () => boolean;
}

/** Points that first guesses are made at. */
const COARSE = 64;
/** Points that pairs are first looked at. */
const COARSER = 32;
/** How many of a round are fitted to all points. */
const REFINED = 24;
/** A single fault below this chance has pairs looked for. */
const DOUBTFUL = 0.02;
/** Single faults that pairs are built upon: where none explains the readings, and where one does. */
const BASES = 10;
const SURE_BASES = 2;
/** How much worse than a fault alone a pair may look at first. */
const GENEROUS = 3;
/** Pairs that are fitted further once all have been looked at. */
const SETTLED = 48;
/** Whole curve, squared, in units of the noise: less is no difference. */
const UNSEEN = 1;
/** Worth, in logarithms below the best, from which a candidate is not looked at again. */
const HOPELESS = 40;

/**
 * Single and double faults of a design in the order in which a taken impedance makes them likely.
 *
 * `healthy` is built at the data's own frequencies. Faults that impedance does not show are listed, not ranked.
 */
export function rankFaults(
  healthy: Hypothesis,
  model: SpeakerModel,
  data: ImpedanceData,
  { onProgress, shouldStop }: RankOptions,
): RankedFaults {
  const rough = (count: number) => {
    const picks = evenly(
      Array.from(data.omegas, (_, f) => f),
      count,
    );
    return {
      data: atPlaces(data, picks),
      base: { ...healthy, build: atFrequencies(healthy.build, picks) },
      share: picks.length / data.omegas.length,
    };
  };
  const coarse = rough(COARSE);
  const { seen, invisible } = visible(singleFaults(model, healthy.build), coarse.base, model, data);
  const priors = faultPriors(seen);
  const none = new Map<string, number>();
  let wasStopped = false;
  const steps = (share: number, from: number, to: number): boolean => {
    onProgress(from + share * (to - from));
    wasStopped ||= shouldStop();
    return wasStopped;
  };

  const first: Candidate[] = [];
  const firstEffort = { perStart: 2, more: 3, mostStarts: 6 };
  for (let k = 0; k < seen.length; k++) {
    if (steps(k / seen.length, 0, 0.25)) break;
    const hypothesis = withFault(coarse.base, seen[k]!, model);
    if (hypothesis === null) continue;
    const fit = fitHypothesis(hypothesis, coarse.data, none, firstEffort);
    first.push({ hypothesis, logPrior: priors.logSingle(seen[k]!), fit });
  }
  const byFirst = sorted(first);
  const whole = (hypothesis: Hypothesis, logPrior: number, from: ReadonlyMap<string, number>): Candidate => {
    const still = { ...hypothesis, wild: [] };
    const fit = fitHypothesis(still, data, from, { perStart: 0, more: 12, mostStarts: 1 });
    return { hypothesis, logPrior, fit };
  };
  const refine = (candidates: readonly Candidate[], from: number, to: number): Candidate[] => {
    const done: Candidate[] = [];
    const best = candidates[0];
    for (const candidate of candidates.slice(0, REFINED)) {
      if (logWorth(candidate) < logWorth(best!) - HOPELESS || steps(done.length / REFINED, from, to)) break;
      const hypothesis = rebuilt(healthy, candidate.hypothesis.faults, model);
      done.push(whole(hypothesis, candidate.logPrior, logsByKey(candidate)));
    }
    return done;
  };
  let candidates = sorted([whole(healthy, priors.logHealthy, none), ...refine(byFirst, 0.25, 0.4)]);
  const chanceOf = ({ fit }: Candidate): number =>
    chiSquareTail(fit.cost, data.omegas.length * (data.phasesRad === null ? 1 : 2));
  const isDoubtful = chanceOf(candidates[0]!) < DOUBTFUL;
  if (!wasStopped && (isDoubtful || candidates[0]!.hypothesis.faults.length > 0)) {
    const bases = differentPlaces(byFirst).slice(0, isDoubtful ? BASES : SURE_BASES);
    const pairs = doubleFaults(bases, seen, rough(COARSER), model, priors, (share) => steps(share, 0.4, 0.9));
    candidates = sorted([...candidates, ...refine(pairs, 0.9, 1)]);
  }
  onProgress(1);
  return { candidates, invisible, chance: chanceOf(candidates[0]!), wasStopped };
}

const sorted = (candidates: readonly Candidate[]): Candidate[] =>
  [...candidates].sort((a, b) => logWorth(b) - logWorth(a));

/** Which faults an impedance can show at all: those that change it, all values nominal, by more than the noise. */
function visible(faults: readonly Fault[], base: Hypothesis, model: SpeakerModel, data: ImpedanceData) {
  const seen: Fault[] = [];
  const invisible: Fault[] = [];
  const healthy = solverOf(base);
  const { re, im } = healthy.solve(new Float64Array(base.unknowns.length)).z;
  const scale = data.omegas.length / base.build.omegas.length / data.noise ** 2;
  for (const fault of faults) {
    const hypothesis = withFault(base, fault, model);
    if (hypothesis === null) continue;
    if (hypothesis.wild.length > 0) {
      seen.push(fault);
      continue;
    }
    const z = solverOf(hypothesis).solve(new Float64Array(hypothesis.unknowns.length)).z;
    let sum = 0;
    for (let f = 0; f < re.length; f++) {
      const size = (x: number, y: number): number =>
        Math.min(READABLE_OHM[1], Math.max(READABLE_OHM[0], Math.hypot(x, y)));
      sum += Math.log(size(z.re[f]!, z.im[f]!) / size(re[f]!, im[f]!)) ** 2;
      if (data.phasesRad !== null) sum += angle(z.re[f]!, z.im[f]!, re[f]!, im[f]!) ** 2;
    }
    (sum * scale > UNSEEN ? seen : invisible).push(fault);
  }
  return { seen, invisible };
}

const angle = (a: number, b: number, c: number, d: number): number => Math.atan2(b * c - a * d, a * c + b * d);

/** Pairs: each of the best single faults with every other one on top. */
function doubleFaults(
  bases: readonly Candidate[],
  faults: readonly Fault[],
  { data, base }: { readonly data: ImpedanceData; readonly base: Hypothesis },
  model: SpeakerModel,
  priors: FaultPriors,
  isStopped: (share: number) => boolean,
): Candidate[] {
  const found = new Map<string, Candidate>();
  let done = 0;
  for (const { hypothesis, fit } of bases) {
    const first = hypothesis.faults[0]!;
    const known = logsByKey({ hypothesis, fit });
    const one = withFault(base, first, model)!;
    const alone = settled({ hypothesis: one, logPrior: 0, fit }, data, known).fit;
    const hopelessAbove = GENEROUS * alone.cost;
    // What one fault alone made of the tolerances misleads a pair: only the size of what is wrong is taken over.
    const sizes = new Map(one.wild.map(({ key }) => [key, known.get(key)!]));
    for (const second of faults) {
      done++;
      if (done % 16 === 0 && isStopped(done / (bases.length * faults.length))) return sorted([...found.values()]);
      if (placesOf(second).some((place) => placesOf(first).includes(place))) continue;
      const pair = withFault(one, second, model);
      if (pair === null) continue;
      const name = [first, second]
        .map((fault) => JSON.stringify(fault))
        .sort()
        .join();
      const both = fitHypothesis(pair, data, sizes, { perStart: 2, more: 0, mostStarts: 2, hopelessAbove });
      const earlier = found.get(name);
      if (both.cost > hopelessAbove || (earlier !== undefined && earlier.fit.cost <= both.cost)) continue;
      found.set(name, { hypothesis: pair, logPrior: priors.logDouble(first, second), fit: both });
    }
  }
  return sorted(
    sorted([...found.values()])
      .slice(0, SETTLED)
      .map((candidate) => settled(candidate, data, logsByKey(candidate))),
  );
}

/** The same fitted further from where values stand. */
function settled(candidate: Candidate, data: ImpedanceData, known: ReadonlyMap<string, number>): Candidate {
  const still = { ...candidate.hypothesis, wild: [] };
  return { ...candidate, fit: fitHypothesis(still, data, known, { perStart: 0, more: 5, mostStarts: 1 }) };
}

/** The best of each place. */
function differentPlaces(candidates: readonly Candidate[]): Candidate[] {
  const taken = new Set<string>();
  return candidates.filter(({ hypothesis }) => {
    const name = [...placesOf(hypothesis.faults[0]!)].sort().join(' ');
    if (taken.has(name)) return false;
    taken.add(name);
    return true;
  });
}
