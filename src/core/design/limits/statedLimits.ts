import type { Design } from '../../document/design.ts';
import { driverOf } from '../keyFigures.ts';
import { coilHeatOf } from './coilHeatOf.ts';
import type { LimitStatements } from './limitsOf.ts';

export interface LimitChoices {
  /** Peak air speed still allowed in ports, m/s; null: ports do not limit. */
  readonly portPeakMPerS: number | null;
  /** How long a sine lasts, s; Infinity: until coils have settled. */
  readonly lastsS: number;
  /** Whether coils whose heat is not stated limit as is usual for their size. */
  readonly withUsualHeat: boolean;
}

/**
 * What a document says of its limits, with what the person chose beside it. Coils start at the temperature of the air.
 * @example greatestLevel(limitsOf(model, simulation, project.chain.driveV, statedLimits(project, choices)))
 */
export function statedLimits(design: Design, choices: LimitChoices): LimitStatements {
  const { network, enclosure, chain, air } = design;
  const drivers = network.parts.flatMap(({ id, kind }) => {
    const driver = kind === 'speaker' ? driverOf(design, id) : undefined;
    if (driver === undefined) return [];
    const heat = coilHeatOf(driver);
    const { xmaxM = null, ratedPowerW = null } = driver.entered;
    return [[id, { xmaxM, ratedPowerW, heat: heat.isStated || choices.withUsualHeat ? heat : null }] as const];
  });
  return {
    drivers: new Map(drivers),
    radiatorXmaxM: new Map(enclosure.passiveRadiators.map(({ id, xmaxM }) => [id, xmaxM])),
    portPeakMPerS: choices.portPeakMPerS,
    amplifiers: new Map(chain.amplifiers.map((amplifier) => [amplifier.id, amplifier])),
    startC: air.temperatureC,
    lastsS: choices.lastsS,
  };
}
