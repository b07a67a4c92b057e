import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { atFrequencies } from './atFrequencies.ts';
import { type Candidate, logWorth } from './candidate.ts';
import { type Fault, faultKey } from './fault.ts';
import { faultPriors } from './faultPriors.ts';
import { faultProblem } from './faultProblem.ts';
import type { FaultGroup, FaultReport, RankedFault } from './faultReport.ts';
import { type FaultTolerances, USUAL_TOLERANCES } from './faultTolerances.ts';
import { fittedValue } from './fittedValue.ts';
import { groupCandidates } from './groupCandidates.ts';
import { healthyUnknowns } from './healthyUnknowns.ts';
import { type Hypothesis, withFault } from './hypothesis.ts';
import { atPlaces, evenly, impedanceData, type TakenImpedance } from './impedanceData.ts';
import { nextMeasurement } from './nextMeasurement.ts';
import { nominalBuild } from './nominalBuild.ts';
import { rankFaults } from './rankFaults.ts';
import { singleFaults } from './singleFaults.ts';
import { type ResponseCheck, responseCheck, type TakenResponse } from './takenResponse.ts';

export interface FaultSearch {
  /** The design as it should have been built. */
  readonly model: SpeakerModel;
  /** The channel that was measured; absent: the first. */
  readonly amplifierId?: string;
  readonly impedance: TakenImpedance;
  readonly response?: TakenResponse | null;
  readonly tolerances?: FaultTolerances;
  /** Share done, from 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked often; true ends the search with what is known by then. */
  readonly shouldStop?: () => boolean;
}

/** Chance below which even the best explanation explains nothing. */
const UNEXPLAINED = 1e-4;
/** Groups and members of them below this probability are not handed on. */
const NEGLIGIBLE = 1e-6;
/** Points at which impedances are compared with each other. */
const COMPARED = 64;

/**
 * What is wrong with a built loudspeaker, by its impedance at the terminals and, where given, its response: single faults and pairs
 * of them ranked by how likely they are, healthy builds within `tolerances` being no fault.
 *
 * Each hypothesis is fitted with all values that stray in a healthy build (`fitBuild`); its probability is prior times evidence among
 * all that was looked for. Where a fault is of a kind not looked for, the verdict is `not-explained` at best. Reversed drivers that share
 * no chamber do not show in an impedance: they are judged by the response alone. Holds while the model's driver and box hold.
 * Problems: `faults.too-few-readings`, `speaker.no-amplifier`, and those of solving the model.
 * @example findFaults({ model, impedance: { frequenciesHz, magnitudesOhm, phasesDeg, noiseShare: null } })
 */
export function findFaults(search: FaultSearch): Result<FaultReport> {
  const { model, response = null, tolerances = USUAL_TOLERANCES } = search;
  const amplifierId = search.amplifierId ?? model.amplifiers[0]?.id;
  if (amplifierId === undefined) return fail(problem('speaker.no-amplifier', { kind: 'document' }));
  const data = impedanceData(search.impedance);
  if (data === null) return fail(problem('faults.too-few-readings', { kind: 'curve' }));
  const build = nominalBuild(model, amplifierId, data.omegas);
  if (!build.ok) return build;
  const unknowns = healthyUnknowns(model, build.value, tolerances);
  const healthy: Hypothesis = { faults: [], build: build.value, unknowns, wild: [] };
  const check = response === null ? null : responseCheck(response, amplifierId, unknowns);
  if (check !== null && !check.ok) return check;

  const ranked = rankFaults(healthy, model, data, {
    onProgress: search.onProgress ?? (() => undefined),
    shouldStop: search.shouldStop ?? (() => false),
  });
  const heard = check === null ? ranked.candidates : withSound(ranked.candidates, check.value.costOf, healthy, model);
  const candidates = [...heard].sort((a, b) => logWorth(b) - logWorth(a));

  const picks = evenly(
    Array.from(data.omegas, (_, f) => f),
    COMPARED,
  );
  const base = { ...healthy, build: atFrequencies(healthy.build, picks) };
  const rough = { data: atPlaces(data, picks), base, share: picks.length / data.omegas.length };
  const grouped =
    check === null ? groupCandidates(candidates, rough, model) : bySound(candidates, check.value, rough, model);

  const best = logWorth(candidates[0]!);
  const total = candidates.reduce((sum, candidate) => sum + Math.exp(logWorth(candidate) - best), 0);
  const probabilityOf = (candidate: Candidate): number => Math.exp(logWorth(candidate) - best) / total;
  const groups = grouped
    .map((members): FaultGroup => {
      const probability = members.reduce((sum, member) => sum + probabilityOf(member), 0);
      const likely = members.filter((member, k) => k === 0 || probabilityOf(member) > NEGLIGIBLE);
      const listed = likely.filter((member, k) => !likely.slice(0, k).some((less) => isMoreThan(member, less)));
      return { probability, members: listed.map((member) => rankedFault(member, probabilityOf(member), model)) };
    })
    .filter(({ probability }, k) => k < 3 || probability > NEGLIGIBLE)
    .sort((a, b) => b.probability - a.probability);

  const isHealthy = (group: FaultGroup | undefined): boolean =>
    group?.members.some(({ faults }) => faults.length === 0) ?? false;
  const verdict = ranked.chance < UNEXPLAINED ? 'not-explained' : isHealthy(groups[0]) ? 'nothing-wrong' : 'found';
  const next = verdict === 'nothing-wrong' ? null : tellingApart(candidates, base, model, data.noise);
  const healthyCandidate = candidates.find(({ hypothesis }) => hypothesis.faults.length === 0)!;
  return succeed({
    verdict,
    groups,
    misfitHealthy: healthyCandidate.fit.cost,
    readings: data.omegas.length * (data.phasesRad === null ? 1 : 2),
    chance: ranked.chance,
    noiseShare: data.noise,
    invisible: ranked.invisible,
    nextMeasurement: next,
    problems: remarks(verdict, ranked.invisible, response !== null),
    wasStopped: ranked.wasStopped,
  });
}

/** Whether a candidate has all the faults of another and more: alike, the more adds nothing that could be seen. */
function isMoreThan(candidate: Candidate, less: Candidate): boolean {
  const keys = candidate.hypothesis.faults.map(faultKey);
  const { faults } = less.hypothesis;
  return faults.length < keys.length && faults.every((fault) => keys.includes(faultKey(fault)));
}

/** Explanations after the best from which a measurement may tell it apart. */
const RIVALS = 6;

/** What would tell the best explanation from the next one that anything tells it from. */
function tellingApart(candidates: readonly Candidate[], base: Hypothesis, model: SpeakerModel, noise: number) {
  const [first, ...rivals] = candidates.slice(0, 1 + RIVALS);
  for (const rival of rivals) {
    const next = first && nextMeasurement(first, rival, base, model, noise);
    if (next) return next;
  }
  return null;
}

/** Every candidate as it is and with each driver turned round, weighed by the response too. */
function withSound(
  candidates: readonly Candidate[],
  costOf: (candidate: Candidate) => number,
  healthy: Hypothesis,
  model: SpeakerModel,
): Candidate[] {
  const all = singleFaults(model, healthy.build);
  const priors = faultPriors(all);
  const reversals = all.filter(({ kind }) => kind === 'driver-reversed');
  const heard: Candidate[] = [];
  for (const candidate of candidates) {
    const { hypothesis, logPrior, fit } = candidate;
    const variants: Candidate[] = [candidate];
    for (const reversal of reversals) {
      if (hypothesis.faults.length > 1 || hypothesis.faults.some(({ kind }) => kind === 'driver-reversed')) continue;
      const turned = withFault(hypothesis, reversal, model);
      if (turned === null) continue;
      const [first] = hypothesis.faults;
      const prior =
        first === undefined
          ? priors.logSingle(reversal)
          : logPrior + priors.logDouble(first, reversal) - priors.logSingle(first);
      variants.push({ hypothesis: turned, logPrior: prior, fit });
    }
    for (const variant of variants) {
      const logEvidence = fit.logEvidence - costOf(variant) / 2;
      heard.push({ ...variant, fit: { ...fit, logEvidence } });
    }
  }
  return heard;
}

/** Levels that differ by less nowhere sound alike, dB. */
const SOUNDS_ALIKE_DB = 0.2;

/** Groups among candidates with the same drivers reversed, or others whose reversal sounds alike, as of one driver of two or of the other. */
function bySound(
  candidates: readonly Candidate[],
  check: ResponseCheck,
  rough: Parameters<typeof groupCandidates>[1],
  model: SpeakerModel,
): Candidate[][] {
  const reversedIn = ({ hypothesis }: Candidate): string =>
    hypothesis.faults
      .flatMap((fault) => (fault.kind === 'driver-reversed' ? [fault.partId] : []))
      .sort()
      .join(' ');
  const sets: { readonly names: Set<string>; readonly levelsDb: Float64Array; readonly members: Candidate[] }[] = [];
  for (const candidate of candidates) {
    const name = reversedIn(candidate);
    const known = sets.find(({ names }) => names.has(name));
    if (known !== undefined) {
      known.members.push(candidate);
      continue;
    }
    const levelsDb = check.levelsDbOf(candidate);
    const alike = sets.find((set) =>
      set.levelsDb.every((level, f) => Math.abs(level - levelsDb[f]!) < SOUNDS_ALIKE_DB),
    );
    if (alike === undefined) sets.push({ names: new Set([name]), levelsDb, members: [candidate] });
    else {
      alike.names.add(name);
      alike.members.push(candidate);
    }
  }
  return sets
    .flatMap(({ members }) => groupCandidates(members, rough, model))
    .sort((a, b) => logWorth(b[0]!) - logWorth(a[0]!));
}

function rankedFault(candidate: Candidate, probability: number, model: SpeakerModel): RankedFault {
  const { faults } = candidate.hypothesis;
  const fitted = faults.map((fault) => fittedValue(fault, candidate, model));
  return {
    faults,
    fitted,
    probability,
    misfit: candidate.fit.cost,
    problems: faults.map((fault, k) => faultProblem(fault, fitted[k]!, model)),
  };
}

function remarks(verdict: FaultReport['verdict'], invisible: readonly Fault[], hasResponse: boolean): Problem[] {
  const place = { kind: 'document' } as const;
  const problems: Problem[] = [];
  if (verdict === 'nothing-wrong') problems.push(problem('faults.nothing-wrong', place));
  if (verdict === 'not-explained') problems.push(problem('faults.not-explained', place));
  const reversals = invisible.flatMap((fault) => (fault.kind === 'driver-reversed' ? [fault.partId] : []));
  if (reversals.length > 0 && !hasResponse) {
    problems.push(problem('faults.reversal-invisible', place, { drivers: reversals.join(', ') }));
  }
  return problems;
}
