import { type CoilHeat, heatResponseKPerW, heatUp } from '../../acoustics/index.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { simulate } from '../../speaker/simulate.ts';
import type { Simulation } from '../../speaker/simulation.ts';
import { sweepGrid } from '../sweepGrid.ts';
import { hotModel } from './hotModel.ts';
import { heatReport, type Programme, type ProgrammeHeat } from './programmeHeat.ts';
import { programmePowerW } from './programmePower.ts';
import { programmeBandEdgesHz } from './programmeSpectrum.ts';

/** Points per third octave: resonances of Q 5 are seen within 1 % of their band's power. */
const POINTS_PER_BAND = 6;
const SETTLED_K = 1e-4;
const MOST_ROUNDS = 80;

/** How the search for the settled state ends. */
export interface Settling {
  readonly mostRounds: number;
  /** Rounds end when no coil moves by more, K. */
  readonly settledK: number;
  /** Where it starts, K by part; coils left out start cold. */
  readonly fromK?: ReadonlyMap<string, number>;
}

export interface SettledHeat {
  readonly heats: readonly ProgrammeHeat[];
  /** The loudspeaker with its coils as hot as they are at the end. */
  readonly model: SpeakerModel;
  /** false: the rounds ran out before all coils stood within `settledK`. */
  readonly converged: boolean;
  readonly rounds: number;
}

/**
 * How hot music makes each coil that has a heat path, with the whole loudspeaker solved again as they warm.
 *
 * Settled state: powers from the hot circuit, a secant step for each coil towards the rise that they keep, until nothing moves.
 * After a stated time: `heatUp`, one solve for each of its steps. `settling` says how far the settled state is followed, by default
 * to 1e-4 K. Problems: those of `simulate`.
 * @example const settled = settleHeat(model, coils, programme); if (settled.ok) simulate(settled.value.model, grid);
 */
export function settleHeat(
  model: SpeakerModel,
  coils: ReadonlyMap<string, CoilHeat>,
  programme: Programme,
  { mostRounds, settledK, fromK }: Settling = { mostRounds: MOST_ROUNDS, settledK: SETTLED_K },
): Result<SettledHeat> {
  const { bands, crestDb, lastsS, startC } = programme;
  const edges = bands.map(({ centreHz }) => programmeBandEdgesHz(centreHz));
  const lowHz = Math.min(...edges.map(([low]) => low));
  const highHz = Math.max(...edges.map(([, high]) => high));
  const count = Math.ceil(POINTS_PER_BAND * 10 * Math.log10(highHz / lowHz)) + 1;
  const frequenciesHz = sweepGrid(lowHz, highHz, count);
  const heated = model.speakers.flatMap(({ partId }) => {
    const heat = coils.get(partId);
    return heat === undefined ? [] : [{ partId, heat }];
  });
  const hotter = (risesK: readonly number[]): SpeakerModel =>
    hotModel(model, new Map(heated.map(({ partId, heat }, i) => [partId, { riseK: risesK[i]!, metal: heat.metal }])));
  const cold = simulate(model, frequenciesHz);
  if (!cold.ok) return cold;
  let { solved } = cold.value;
  const powersOf = ({ partPowersW }: Simulation): number[] =>
    heated.map(({ partId }) => programmePowerW(partPowersW.get(partId)!, frequenciesHz, bands, crestDb));
  const powersAt = (risesK: readonly number[]): number[] => {
    const hot = simulate(hotter(risesK), frequenciesHz, solved);
    if (!hot.ok) throw new Error('A loudspeaker that was solved cold has no solution with hot coils.');
    solved = hot.value.solved;
    return powersOf(hot.value);
  };
  const coldPowers = powersOf(cold.value);
  let rises = heated.map(({ partId }) => fromK?.get(partId) ?? 0);
  let rounds = 0;
  let converged = Number.isFinite(lastsS);
  if (converged) {
    rises = heatUp(
      heated.map(({ heat }) => heat.path),
      powersAt,
      lastsS,
    );
  }
  let before: { readonly rises: readonly number[]; readonly goals: readonly number[] } | null = null;
  while (!converged && rounds < mostRounds) {
    rounds++;
    const goals = powersAt(rises).map((powerW, i) => powerW * heatResponseKPerW(heated[i]!.heat.path, lastsS));
    converged = goals.every((goal, i) => Math.abs(goal - rises[i]!) < settledK);
    const next = converged ? goals : goals.map((goal, i) => secantStep(rises[i]!, goal, before, i));
    before = { rises, goals };
    rises = next;
  }
  const powers = powersAt(rises);
  return succeed({
    heats: heated.map(({ partId, heat }, i) => heatReport(partId, heat, startC, coldPowers[i]!, powers[i]!, rises[i]!)),
    model: hotter(rises),
    converged,
    rounds,
  });
}

/** Slopes of what a coil sustains over its own rise that a step may take: -α P0 R/(1 + α x)² at the steepest, above 0 behind a crossover. */
const LEAST_SLOPE = -3;
const GREATEST_SLOPE = 0.8;

/** Where the line through this round and the one before meets goal = rise; the first round goes halfway. */
function secantStep(
  rise: number,
  goal: number,
  before: { readonly rises: readonly number[]; readonly goals: readonly number[] } | null,
  i: number,
): number {
  const moved = before === null ? 0 : rise - before.rises[i]!;
  const slope = moved === 0 ? -1 : (goal - before!.goals[i]!) / moved;
  return Math.max(0, rise + (goal - rise) / (1 - Math.min(GREATEST_SLOPE, Math.max(LEAST_SLOPE, slope))));
}
