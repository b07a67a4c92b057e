import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import {
  coilHeatOf,
  programmeHeat,
  settleHeat,
  USUAL_CREST_DB,
  USUAL_PROGRAMME,
} from '../../../../src/core/design/limits/index.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { driven, room } from '../boxWithOpenings.ts';

const heat = { wire: 'copper', coilKPerW: 4, coilS: 8, magnetKPerW: 2, magnetS: 1800, limitC: 150 } as const;
const heated = (project: Project): Project => ({
  ...project,
  drivers: project.drivers.map((driver) => (driver.role === 'woofer' ? { ...driver, heat } : driver)),
});
const programme = {
  bands: USUAL_PROGRAMME,
  crestDb: USUAL_CREST_DB,
  lastsS: Number.POSITIVE_INFINITY,
  startC: room.air.temperatureC,
};
const at = (project: Project) => {
  const result = evaluateProject(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const { model, simulation, keyFigures } = result.value;
  const coils = new Map(
    project.network.parts.flatMap((part) => {
      if (part.kind !== 'speaker') return [];
      const driver = project.drivers.find(({ id }) => id === part.driverId)!;
      return [[part.id, coilHeatOf(driver)] as const];
    }),
  );
  const exact = settleHeat(model, coils, programme);
  if (!exact.ok) throw new Error(JSON.stringify(exact.problems));
  return { heats: keyFigures.coilHeats, quick: programmeHeat(simulation, coils, programme), exact: exact.value };
};

describe('coil heats of the figures', () => {
  it('are the quick estimate for coils as usual, however hot, and for stated ones below half of their allowed rise', () => {
    for (const project of [driven(room, 80), driven(heated(room), 2.83)]) {
      const { heats, quick } = at(project);
      expect(heats.map(({ isStated: _, ...own }) => own)).toEqual(quick);
    }
    expect(at(heated(room)).heats.map(({ isStated }) => isStated)).toEqual(
      at(room).quick.map(({ partId }) => partId === 'LS1'),
    );
  });
  it('are the settled ones once a stated coil nears its limit, to a tenth of a kelvin', () => {
    for (const driveV of [50, 60, 80, 120, 160]) {
      const { heats, quick, exact } = at(driven(heated(room), driveV));
      expect(exact.converged).toBe(true);
      const [own, estimate] = [heats, quick].map((list) => list.find(({ partId }) => partId === 'LS1')!);
      // Settled to a tenth of a kelvin, the exact one to a ten-thousandth.
      expect(Math.abs(own!.riseK - exact.heats.find(({ partId }) => partId === 'LS1')!.riseK)).toBeLessThan(0.1);
      // Behind the crossover the quick estimate is too low; at these rises by more than a tenth.
      expect(own!.riseK).toBeGreaterThan(1.1 * estimate!.riseK);
    }
  });
});

describe('settleHeat from an estimate', () => {
  it('settles within four rounds to 0.1 K, where a cold start to 1e-4 K takes more, at the same temperatures', () => {
    for (const driveV of [50, 80, 120, 160]) {
      const project = driven(heated(room), driveV);
      const { quick, exact } = at(project);
      const result = evaluateProject(project);
      if (!result.ok) throw new Error('Evaluated before.');
      const coils = new Map([['LS1', coilHeatOf(project.drivers.find(({ role }) => role === 'woofer')!)]]);
      const fromK = new Map(quick.map(({ partId, riseK }) => [partId, riseK]));
      const warm = settleHeat(result.value.model, coils, programme, { mostRounds: 8, settledK: 0.1, fromK });
      if (!warm.ok) throw new Error(JSON.stringify(warm.problems));
      expect(warm.value.converged).toBe(true);
      expect(warm.value.rounds).toBeLessThanOrEqual(4);
      expect(warm.value.rounds).toBeLessThan(exact.rounds);
      const capped = settleHeat(result.value.model, coils, programme, { mostRounds: 1, settledK: 1e-9, fromK });
      expect(capped.ok && [capped.value.converged, capped.value.rounds]).toEqual([false, 1]);
    }
  });
});
