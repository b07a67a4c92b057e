import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../../src/core/design/findings/later.ts';
import { crossReferences } from '../../../../src/core/document/checks/crossReferences.ts';
import { projectSchema } from '../../../../src/core/document/schema.ts';
import { newChamber } from '../../../../src/core/document/start/newChamber.ts';
import { newDriver } from '../../../../src/core/document/start/newDriver.ts';
import { newPort } from '../../../../src/core/document/start/newPort.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { newWay } from '../../../../src/core/document/start/newWay.ts';
import { edited } from '../edits.ts';

describe('starting documents', () => {
  it('are valid, hang together and can be solved without a warning about their driver', () => {
    const project = newProject();
    expect(projectSchema.parse(project)).toEqual(project);
    expect(crossReferences(project)).toEqual([]);
    const result = evaluateProject(project, undefined, laterChecks);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    expect(result.value.findings.filter(({ place }) => place.kind === 'driver')).toEqual([]);
    // Inner size 164 × 284 × 184 mm less the driver's 0.3 L: V = 0.164 · 0.284 · 0.184 = 8.570 L.
    expect(result.value.keyFigures.chambers[0]!.netM3).toBeCloseTo(0.164 * 0.284 * 0.184 - 0.3e-3, 9);
  });

  it('hold one driver, one amplifier, one speaker and no more', () => {
    const { drivers, network, enclosure, chain } = newProject();
    expect([drivers.length, network.parts.length, enclosure.chambers.length, chain.amplifiers.length]).toEqual([
      1, 2, 1, 1,
    ]);
  });

  it('are new each time, so that one cannot spoil the next', () => {
    expect(newProject()).not.toBe(newProject());
    expect(newProject()).toEqual(newProject());
  });

  it('grow by ways, chambers and ports of every kind and still can be solved', () => {
    const start = edited(newProject(), {
      type: 'set-enclosure',
      changes: { heightM: 0.9, widthM: 0.26, depthM: 0.3 },
    });
    const grown = (['woofer', 'mid', 'tweeter'] as const).reduce(
      (project, role) => edited(project, newWay(project, role)),
      start,
    );
    const chambered = edited(grown, { type: 'add-chamber', chamber: newChamber(grown) });
    const ported = edited(chambered, { type: 'add-port', port: newPort(chambered, 'chamber-2') });
    expect(evaluateProject(ported, undefined, laterChecks)).toMatchObject({ ok: true });
    expect(ported.network.parts.map(({ id }) => id)).toEqual(['V1', 'LS1', 'LS2', 'LS3', 'LS4']);
  });
});

describe('newDriver', () => {
  it.each(['woofer', 'mid', 'tweeter', 'full-range'] as const)('says that the %s is invented', (role) => {
    const driver = newDriver(role, 'd');
    expect(driver).toMatchObject({ role, id: 'd' });
    expect(driver.name).toContain('invented');
    expect(driver.description).toContain('Invented');
  });
});
