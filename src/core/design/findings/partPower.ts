import { greatestInBand } from '../band.ts';
import type { Check } from './context.ts';

/** A resistor or coil that a sine at the set drive loads beyond its rating at its worst frequency. */
export const partPower: Check = ({ project, simulation, figures }) => {
  const resistors = project.network.parts.flatMap((part) => {
    if (part.kind !== 'resistor' || part.ratedPowerW === null) return [];
    const powers = simulation.partPowersW.get(part.id);
    const greatest = powers && greatestInBand(powers, simulation.frequenciesHz, 20, 20000);
    return greatest && greatest.value > part.ratedPowerW
      ? [
          {
            id: part.id,
            powerW: greatest.value,
            atHz: greatest.atHz,
            ratedW: part.ratedPowerW,
            code: 'finding.resistor-power',
          },
        ]
      : [];
  });
  const coils = figures.coilPowers.flatMap(({ partId, powerW, atHz, ratedW }) =>
    ratedW !== null && powerW > ratedW ? [{ id: partId, powerW, atHz, ratedW, code: 'finding.coil-power' }] : [],
  );
  return [...resistors, ...coils].map(({ id, code, powerW, atHz, ratedW }) => ({
    severity: 'danger' as const,
    code,
    place: { kind: 'part' as const, id },
    values: { powerW, atHz, ratedW },
  }));
};
