import type { Part } from '../../circuit/index.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import { levelsDbSpl, type ModelSpeaker, type SpeakerModel, simulate } from '../../speaker/index.ts';
import type { Prediction, UncertainValue } from './fitUncertain.ts';

/** What of a built speaker is never known for certain before it is measured. */
export type SpeakerUncertainty =
  /** Gain of microphone and drive together, dB. */
  | { readonly kind: 'level'; readonly sdDb: number }
  /** How much further back a driver's acoustic centre lies than was entered, m. */
  | { readonly kind: 'depth'; readonly partId: string; readonly sdM: number }
  /** A part's value; `relativeSd` of ln of it: a tolerance of 5 % that is a limit has about 0.03. */
  | { readonly kind: 'part'; readonly partId: string; readonly relativeSd: number };

const mainValue = (part: Part | undefined): number => {
  if (part?.kind === 'resistor') return part.ohm;
  if (part?.kind === 'capacitor') return part.farad;
  if (part?.kind === 'inductor') return part.henry;
  throw new RangeError('Only a resistor, capacitor or inductor has a value with a tolerance.');
};

const withValue = (part: Part, value: number): Part => {
  if (part.kind === 'resistor') return { ...part, ohm: value };
  if (part.kind === 'capacitor') return { ...part, farad: value };
  if (part.kind === 'inductor') return { ...part, henry: value };
  return part;
};

const moved = (speaker: ModelSpeaker, byM: number): ModelSpeaker => ({
  ...speaker,
  radiation: { ...speaker.radiation, distanceM: speaker.radiation.distanceM + byM },
});

/**
 * The level of a speaker, dB re 20 µPa at the listening point, as a function of what is uncertain about it: to be given to `fitUncertain`.
 *
 * Ids are 'level', the part's id, and the speaker part's id followed by ' depth'. A depth of 0 is the place that was entered.
 * Throws a RangeError for a part or speaker that is not there; the model must be one that `simulate` solves: the nominal design is
 * tried first, and its problems come back.
 *
 * Example: speakerPrediction(model, frequenciesHz, [{ kind: 'part', partId: 'C1', relativeSd: 0.03 }])
 */
export function speakerPrediction(
  model: SpeakerModel,
  frequenciesHz: Float64Array,
  uncertainties: readonly SpeakerUncertainty[],
): Result<{ readonly uncertain: readonly UncertainValue[]; readonly predict: Prediction }> {
  const uncertain = uncertainties.map((what): UncertainValue => {
    if (what.kind === 'level') return { id: 'level', nominal: 0, spread: { kind: 'absolute', sd: what.sdDb } };
    if (what.kind === 'part') {
      const nominal = mainValue(model.parts.find(({ id }) => id === what.partId));
      return { id: what.partId, nominal, spread: { kind: 'relative', sd: what.relativeSd } };
    }
    if (!model.speakers.some(({ partId }) => partId === what.partId))
      throw new RangeError(`The model has no speaker ${what.partId}.`);
    return { id: `${what.partId} depth`, nominal: 0, spread: { kind: 'absolute', sd: what.sdM } };
  });
  const levels = (values: ArrayLike<number>): Result<Float64Array> => {
    let { parts, speakers } = model;
    let gainDb = 0;
    uncertainties.forEach((what, j) => {
      const value = values[j]!;
      if (what.kind === 'level') gainDb = value;
      else if (what.kind === 'part')
        parts = parts.map((part) => (part.id === what.partId ? withValue(part, value) : part));
      else speakers = speakers.map((speaker) => (speaker.partId === what.partId ? moved(speaker, value) : speaker));
    });
    const solved = simulate({ ...model, parts, speakers }, frequenciesHz);
    return solved.ok ? succeed(levelsDbSpl(solved.value.sum).map((db) => db + gainDb)) : solved;
  };
  const nominal = levels(uncertain.map(({ nominal: value }) => value));
  if (!nominal.ok) return nominal;
  const nothing = new Float64Array(frequenciesHz.length).fill(Number.NaN);
  return succeed({
    uncertain,
    // What cannot be solved on the way makes the search turn back.
    predict: (values) => {
      const found = levels(values);
      return found.ok ? found.value : nothing;
    },
  });
}
