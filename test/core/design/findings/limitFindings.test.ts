import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { amplifiersBeyond } from '../../../../src/core/design/findings/amplifierEnds.ts';
import { hotCoils } from '../../../../src/core/design/findings/coilHeat.ts';
import { laterChecks } from '../../../../src/core/design/findings/later.ts';
import { hearingTimeS, loudFor } from '../../../../src/core/design/findings/loudness.ts';
import {
  coilHeatOf,
  greatestLevel,
  limitsOf,
  spareAtDrive,
  statedLimits,
} from '../../../../src/core/design/limits/index.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { demoProject } from '../demoProject.ts';

const room = demoProject('reading-room');
const evaluated = (project: Project) => {
  const result = evaluateProject(project, undefined, laterChecks);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const found = (project: Project, code: string) => evaluated(project).findings.filter((f) => f.code === code);
const driven = (project: Project, driveV: number): Project => ({ ...project, chain: { ...project.chain, driveV } });
const withAmplifier = (project: Project, changes: Partial<Project['chain']['amplifiers'][number]>): Project => ({
  ...project,
  chain: { ...project.chain, amplifiers: project.chain.amplifiers.map((amplifier) => ({ ...amplifier, ...changes })) },
});
const heat = { wire: 'copper', coilKPerW: 4, coilS: 8, magnetKPerW: 2, magnetS: 1800, limitC: 150 } as const;
const heated = (project: Project): Project => ({
  ...project,
  drivers: project.drivers.map((driver) => (driver.role === 'woofer' ? { ...driver, heat } : driver)),
});

describe('coil heat', () => {
  it('is silent until heat is stated, then speaks where music makes the coil too hot', () => {
    expect(found(driven(room, 40), 'finding.coil-heat')).toEqual([]);
    expect(found(driven(heated(room), 2.83), 'finding.coil-heat')).toEqual([]);
    const [finding] = found(driven(heated(room), 120), 'finding.coil-heat');
    expect(finding!.severity).toBe('danger');
    expect(finding!.values.temperatureC).toBeGreaterThan(150);
    const { sentence, remedy } = word(finding!);
    expect(sentence).toContain('150 °C');
    expect(remedy).toContain('burns');
  });
  it('speaks from just above the limit', () => {
    const coil = { partId: 'LS1', coldPowerW: 20, powerW: 18, riseK: 100, limitC: 120, lossDb: 3 };
    expect(hotCoils([{ ...coil, temperatureC: 120 }], 12)).toEqual([]);
    expect(hotCoils([{ ...coil, temperatureC: 120.1 }], 12)).toHaveLength(1);
  });
});

describe('amplifier', () => {
  it('is silent until its ends are stated, then speaks of the one that is passed', () => {
    expect(found(driven(room, 40), 'finding.amplifier-voltage')).toEqual([]);
    const weak = withAmplifier(room, { peakVoltageV: 30, peakCurrentA: 1000 });
    expect(found(driven(weak, 21.2), 'finding.amplifier-voltage')).toEqual([]);
    const beyond = found(driven(weak, 21.3), 'finding.amplifier-voltage');
    expect(beyond.length).toBe(room.chain.amplifiers.length);
    expect(word(beyond[0]!).sentence).toContain('30.1 V peak');
    expect(found(driven(weak, 21.3), 'finding.amplifier-current')).toEqual([]);
  });
  it('current: √2 times drive over the least impedance with the cable', () => {
    const { leastImpedance, simulation } = (() => {
      const { keyFigures, simulation } = evaluated(room);
      return { leastImpedance: keyFigures.leastImpedance!, simulation };
    })();
    const settings = room.chain.amplifiers.find(({ id }) => id === leastImpedance.amplifierId)!;
    const { impedance } = simulation.amplifiers.find(({ id }) => id === leastImpedance.amplifierId)!;
    const i = simulation.frequenciesHz.indexOf(leastImpedance.atHz);
    const wire = settings.outputResistanceOhm + settings.cableOhm;
    const peakA = (Math.SQRT2 * 20) / Math.hypot(impedance.re[i]! + wire, impedance.im[i]!);
    // The least with the wire may lie a point beside that without it: a thousandth.
    expect(
      found(driven(withAmplifier(room, { peakCurrentA: 1.002 * peakA }), 20), 'finding.amplifier-current'),
    ).toEqual([]);
    const [finding] = found(
      driven(withAmplifier(room, { peakCurrentA: 0.998 * peakA }), 20),
      'finding.amplifier-current',
    );
    expect(finding!.values.value).toBeCloseTo(peakA, 2);
    expect(amplifiersBeyond([])).toEqual([]);
  });
});

describe('hearing', () => {
  it('allows eight hours at 85 dB and halves for every 3 dB', () => {
    // From memory of the usual rule at work: 85 dB 8 h, 88 dB 4 h, 94 dB 1 h, 100 dB 15 min.
    expect([85, 88, 94, 100].map((levelDb) => hearingTimeS(levelDb) / 60)).toEqual([480, 240, 60, 15]);
    expect(loudFor(85)).toEqual([]);
    expect(loudFor(94)[0]!.severity).toBe('note');
    expect(loudFor(100)[0]!.severity).toBe('danger');
    expect(word(loudFor(94)[0]!).sentence).toContain('94 dB');
    expect(word(loudFor(94)[0]!).sentence).toContain('1 h a day');
    expect(word(loudFor(103)[0]!).sentence).toContain('103 dB');
  });
  it('stays silent at the usual drive and speaks at a loud one, 9 dB below the sine’s level', () => {
    expect(found(room, 'finding.hearing')).toEqual([]);
    const loud = driven(room, 28.3);
    const [finding] = found(loud, 'finding.hearing');
    const mean = evaluated(loud).keyFigures.meanLevelDbSpl!;
    expect(finding!.values.levelDb).toBeCloseTo(mean - 12 + 20 * Math.log10(Math.SQRT2), 9);
  });
});

describe('limits of a document', () => {
  const choices = { portPeakMPerS: 17, lastsS: Number.POSITIVE_INFINITY, withUsualHeat: true };
  it('hold what its drivers and amplifiers state, and heat as is usual only where asked', () => {
    const stated = statedLimits(heated(room), { ...choices, withUsualHeat: false });
    for (const part of room.network.parts) {
      if (part.kind !== 'speaker') continue;
      const driver = heated(room).drivers.find(({ id }) => id === part.driverId)!;
      const limits = stated.drivers.get(part.id)!;
      expect(limits.xmaxM).toBe(driver.entered.xmaxM ?? null);
      expect(limits.ratedPowerW).toBe(driver.entered.ratedPowerW ?? null);
      expect(limits.heat?.limitC ?? null).toBe(driver.role === 'woofer' ? 150 : null);
    }
    expect([...statedLimits(room, choices).drivers.values()].every(({ heat: coil }) => coil !== null)).toBe(true);
    expect(
      statedLimits(withAmplifier(room, { peakVoltageV: 30 }), choices)
        .amplifiers.values()
        .next().value,
    ).toMatchObject({
      peakVoltageV: 30,
      peakCurrentA: null,
    });
  });
  it('give finite curves for every demo, and the excursion of the key figures', () => {
    for (const name of ['reading-room', 'kitchen-shelf', 'port-lesson'] as const) {
      const project = demoProject(name);
      const { model, simulation, keyFigures } = evaluated(project);
      const input = limitsOf(model, simulation, project.chain.driveV, statedLimits(project, choices));
      const { levelsDb, bindingBy } = greatestLevel(input);
      expect(levelsDb.every(Number.isFinite)).toBe(true);
      expect(bindingBy.some((by) => by !== null)).toBe(true);
      for (const { curve, value, atHz } of spareAtDrive(input, 20, 20000)) {
        if (curve.kind !== 'excursion') continue;
        const figure = keyFigures.excursions.find(({ partId }) => partId === curve.id)!;
        expect([value, atHz, curve.limit]).toEqual([figure.peakM, figure.atHz, figure.limitM]);
      }
    }
  });
  it('usual coils by role and size', () => {
    const coilKPerW = (role: 'woofer' | 'tweeter', outerDiameterM: number): number =>
      coilHeatOf({ role, outerDiameterM, heat: null }).path[0]!.resistanceKPerW;
    expect(coilKPerW('tweeter', 0.1)).toBeGreaterThan(coilKPerW('woofer', 0.17));
    expect(coilKPerW('woofer', 0.17)).toBeGreaterThan(coilKPerW('woofer', 0.31));
    expect(coilKPerW('woofer', 0.31)).toBeGreaterThan(coilKPerW('woofer', 0.46));
    expect(coilHeatOf({ role: 'woofer', outerDiameterM: 0.2, heat })).toEqual({
      metal: 'copper',
      path: [
        { resistanceKPerW: 4, timeConstantS: 8 },
        { resistanceKPerW: 2, timeConstantS: 1800 },
      ],
      limitC: 150,
      isStated: true,
    });
  });
});
