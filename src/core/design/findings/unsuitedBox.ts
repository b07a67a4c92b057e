import { driverFigures } from '../../acoustics/driver/driverFigures.ts';
import { defaultLossQ } from '../../document/defaults.ts';
import type { ModelSpeaker, SpeakerModel } from '../../speaker/model.ts';
import { type BoxKind, suitability } from '../suitability.ts';
import type { Check } from './context.ts';

/** Drivers whose fs lies within this factor of the lowest play the bass; a crossover keeps the others away from their box's resonance. */
const BASS_OVER_LOWEST = 1.5;

/** A bass driver in a kind of box that is poor for it; says nothing where the box is possible. */
export const unsuitedBox: Check = ({ model }) => {
  const figures = model.speakers.map(({ parameters }) => driverFigures(parameters, model.air));
  const lowestHz = Math.min(...figures.map(({ fsHz }) => fsHz));
  return model.speakers.flatMap((speaker, i) => {
    const kind = kindOf(speaker, model);
    const { fsHz } = figures[i]!;
    if (kind === null || (kind === 'sealed' && fsHz > BASS_OVER_LOWEST * lowestHz)) return [];
    const ql = model.chambers.find(({ id }) => id === speaker.chamberId)?.leak?.q ?? defaultLossQ.leak;
    const all = suitability(figures[i]!, ql);
    const found = all.find((one) => one.kind === kind);
    if (found?.verdict !== 'poor') return [];
    const suits = all.find((one) => one.verdict === 'suits')?.kind ?? '';
    return [
      {
        severity: 'note' as const,
        code: 'finding.unsuited-box',
        place: { kind: 'part' as const, id: speaker.partId },
        values: { ...found.reason.values, because: found.reason.code, kind, suits },
      },
    ];
  });
};

const kindOf = ({ chamberId, frontChamberId, radiation }: ModelSpeaker, model: SpeakerModel): BoxKind | null => {
  if (radiation.dipole !== undefined) return 'open-baffle';
  if (chamberId === null) return null;
  if (frontChamberId !== undefined && frontChamberId !== null) return 'band-pass';
  const ports = model.ports.filter((port) => port.chamberId === chamberId);
  // A stuffed vent is a resistance, not a tuned port: no published alignment speaks of it.
  if (ports.some((port) => port.stuffingPaSPerM3 !== undefined)) return null;
  if (ports.length > 0) return 'vented';
  return model.passiveRadiators.some((radiator) => radiator.chamberId === chamberId) ? 'passive-radiator' : 'sealed';
};
