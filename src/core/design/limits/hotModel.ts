import { COIL_METALS, type CoilHeat, hotCoilOhm } from '../../acoustics/index.ts';
import type { SpeakerModel } from '../../speaker/model.ts';

/** How much hotter than cold the coil of a part of the network is, K, and of what it is wound. */
export type CoilRises = ReadonlyMap<string, { readonly riseK: number; readonly metal: CoilHeat['metal'] }>;

/**
 * The same loudspeaker with hot coils: only their resistance rises, so that Qes and the crossover follow by themselves.
 * Coils not listed stay cold. A measured impedance in the model stays as it was measured.
 */
export const hotModel = (model: SpeakerModel, rises: CoilRises): SpeakerModel => ({
  ...model,
  speakers: model.speakers.map((speaker) => {
    const hot = rises.get(speaker.partId);
    if (hot === undefined) return speaker;
    const reOhm = hotCoilOhm(speaker.parameters.reOhm, hot.riseK, COIL_METALS[hot.metal].alphaPerK);
    return { ...speaker, parameters: { ...speaker.parameters, reOhm } };
  }),
});
