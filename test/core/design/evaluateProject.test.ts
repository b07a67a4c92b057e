import { describe, expect, it } from 'vitest';
import { type Evaluated, evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../src/core/design/findings/later.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { word } from '../../../src/core/messages/index.ts';
import { magnitudes } from '../../../src/core/speaker/complexCurve.ts';
import { demoProject, withPart } from './demoProject.ts';

const room = demoProject('reading-room');
const lesson = demoProject('port-lesson');
const evaluated = (project: Project): Evaluated => {
  const result = evaluateProject(project, undefined, laterChecks);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const codes = (project: Project): string[] => evaluated(project).findings.map((f) => f.code);
const problemCodes = (project: Project): string[] => {
  const result = evaluateProject(project, undefined, laterChecks);
  return result.ok ? [] : result.problems.map((p) => p.code);
};
const reversed = (project: Project, id: string): Project => {
  const part = project.network.parts.find((p) => p.id === id)!;
  return withPart(project, id, { nodes: [part.nodes[1], part.nodes[0]] });
};

describe('evaluateProject', () => {
  it('computes every demo with finite curves and figures', () => {
    for (const name of ['reading-room', 'kitchen-shelf', 'port-lesson'] as const) {
      const { simulation, keyFigures } = evaluated(demoProject(name));
      expect(simulation.sum.re.every(Number.isFinite)).toBe(true);
      expect(simulation.sum.im.every(Number.isFinite)).toBe(true);
      expect(keyFigures.lowMinus3Hz).toBeGreaterThan(20);
      expect(keyFigures.lowMinus3Hz).toBeLessThan(150);
      expect(keyFigures.leastImpedance!.ohm).toBeGreaterThan(1);
    }
  });

  it('does not depend on what an earlier evaluation lends, whatever has changed', () => {
    const before = evaluated(room);
    const { enclosure, listening, air } = room;
    const changed: Project[] = [
      withPart(room, 'C3', { farad: 47e-6 }),
      { ...room, enclosure: { ...enclosure, mounts: enclosure.mounts.map((m) => ({ ...m, xM: m.xM + 0.01 })) } },
      { ...room, enclosure: { ...enclosure, ports: enclosure.ports.map((p) => ({ ...p, face: 'back' as const })) } },
      { ...room, enclosure: { ...enclosure, depthM: enclosure.depthM + 0.02 } },
      { ...room, listening: { ...listening, horizontalDeg: 20 } },
      { ...room, listening: { ...listening, radiation: 'half-space' as const } },
      { ...room, air: { ...air, temperatureC: 5 } },
      { ...room, enclosure: { ...enclosure, ports: [] } },
    ];
    for (const project of changed) {
      const lent = evaluateProject(project, before, laterChecks);
      const fresh = evaluated(project);
      expect(lent.ok && lent.value.simulation.sum).toEqual(fresh.simulation.sum);
      expect(lent.ok && lent.value.keyFigures).toEqual(fresh.keyFigures);
      expect(fresh.simulation.sum).not.toEqual(before.simulation.sum);
    }
  });

  it('moves the dip between the twin peaks to the tuning when the port is shortened', () => {
    // Leak and absorption off, so that the dip stands at the tuning itself; the coil shifts it by well under 1 %.
    const chambers = lesson.enclosure.chambers.map((c) => ({ ...c, leak: null, absorption: null }));
    for (const lengthM of [0.12, 0.08, 0.05]) {
      const ports = lesson.enclosure.ports.map((p) => ({ ...p, lengthM, loss: null }));
      const { simulation, keyFigures } = evaluated({ ...lesson, enclosure: { ...lesson.enclosure, chambers, ports } });
      const tuning = keyFigures.chambers[0]!.tuningHz!;
      const size = magnitudes(simulation.amplifiers[0]!.impedance);
      let dip = -1;
      simulation.frequenciesHz.forEach((hz, i) => {
        if (hz > tuning * 0.8 && hz < tuning * 1.25 && (dip < 0 || size[i]! < size[dip]!)) dip = i;
      });
      // One step of the sweep is 0.76 %.
      expect(Math.abs(simulation.frequenciesHz[dip]! / tuning - 1)).toBeLessThan(0.0077);
    }
  });

  it('reads the tuning of a sealed chamber by the handbook formulas', () => {
    const sealed = { ...lesson, enclosure: { ...lesson.enclosure, ports: [] } };
    const { keyFigures, model } = evaluated(sealed);
    const chamber = keyFigures.chambers[0]!;
    // fc/fs = Qtc/Qts = √(1 + Vas/Vb), with the demo's own data sheet.
    const qts = (4.8 * 0.42) / (4.8 + 0.42);
    expect(chamber.sealed!.qtc / chamber.sealed!.fcHz).toBeCloseTo(qts / 46, 6);
    expect(chamber.sealed!.fcHz / 46).toBeCloseTo(Math.sqrt(1 + 0.022 / chamber.apparentM3), 3);
    expect(model.ports).toHaveLength(0);
  });
});

describe('a sealed chamber', () => {
  const sealed = { ...lesson, enclosure: { ...lesson.enclosure, ports: [] } };
  const [own] = lesson.network.parts.filter((p) => p.kind === 'speaker');
  const mount = lesson.enclosure.mounts[0]!;
  const second = (nodes: readonly [string, string], driverId = 'driver'): Project => ({
    ...sealed,
    drivers: [
      ...sealed.drivers,
      { ...sealed.drivers[0]!, id: 'other', entered: { ...sealed.drivers[0]!.entered, fsHz: 90 } },
    ],
    network: { parts: [...sealed.network.parts, { kind: 'speaker', id: 'LS2', nodes, note: '', driverId }] },
    enclosure: { ...sealed.enclosure, mounts: [mount, { ...mount, partId: 'LS2', yM: 0.15 }] },
  });
  const read = (project: Project) => evaluated(project).keyFigures.chambers[0]!.sealed;

  it('counts two equal drivers side by side as one of twice the compliance', () => {
    expect(own!.nodes).toEqual(['in', '0']);
    expect(read(second(['in', '0']))!.fcHz).toBeGreaterThan(read(sealed)!.fcHz);
  });
  it('states no resonance where drivers differ, or one is reversed', () => {
    expect(read(second(['0', 'in']))).toBeNull();
    expect(read(second(['in', '0'], 'other'))).toBeNull();
  });
});

describe('a measured curve on a driver', () => {
  const carrying = (curve: object, blendHz: number): Project => {
    const whole = {
      id: 'c1',
      name: 'tweeter',
      belongsTo: { kind: 'driver' as const, driverId: 'tweeter' },
      quantity: 'response' as const,
      frequenciesHz: [1000, 3000, 10000, 18000],
      magnitudes: [90, 90, 90, 88],
      phasesDeg: null,
      taken: { baffle: 'own' as const, voltageV: 2.83, distanceM: 1 },
      sourceName: 'tweeter.txt',
      ...curve,
    };
    const use = { responseCurveId: null, impedanceCurveId: null, blendHz };
    const measured =
      whole.quantity === 'response' ? { ...use, responseCurveId: 'c1' } : { ...use, impedanceCurveId: 'c1' };
    const drivers = room.drivers.map((d) => (d.id === 'tweeter' ? { ...d, measured } : d));
    return { ...room, curves: [whole], drivers };
  };

  it('is said to begin late or end early, and to lack a phase', () => {
    expect(codes(carrying({}, 300))).toEqual(
      expect.arrayContaining(['finding.curve-begins-late', 'measured.minimum-phase']),
    );
    expect(codes(carrying({}, 2000))).not.toContain('finding.curve-begins-late');
    expect(codes(carrying({ frequenciesHz: [1000, 3000, 5000, 8000] }, 2000))).toContain('finding.curve-ends-early');
  });
  it('is doubted where an impedance turns further than a passive load can', () => {
    const impedance = { quantity: 'impedance' as const, magnitudes: [6, 6, 7, 9] };
    expect(codes(carrying({ ...impedance, phasesDeg: [170, 175, 178, 179] }, 2000))).toContain(
      'finding.impedance-phase',
    );
    expect(codes(carrying({ ...impedance, phasesDeg: [10, 20, 30, 40] }, 2000))).not.toContain(
      'finding.impedance-phase',
    );
  });
});

describe('findings', () => {
  it('judge the least impedance against the amplifier’s rating', () => {
    const { ohm } = evaluated(room).keyFigures.leastImpedance!;
    const rated = (ratedMinimumLoadOhm: number): Project => ({
      ...room,
      chain: { ...room.chain, amplifiers: room.chain.amplifiers.map((a) => ({ ...a, ratedMinimumLoadOhm })) },
    });
    expect(codes(rated(ohm * 1.02))).toContain('finding.least-impedance');
    expect(codes(rated(ohm * 0.98))).not.toContain('finding.least-impedance');
    expect(evaluated(rated(ohm * 2.1)).findings[0]).toMatchObject({
      severity: 'danger',
      code: 'finding.least-impedance',
    });
  });

  it('see a driver turned round at its crossover', () => {
    const polarity = (project: Project) =>
      evaluated(project).findings.filter((f) => f.code === 'finding.crossover-polarity').length;
    expect(polarity(reversed(room, 'LS2'))).toBeGreaterThan(polarity(room));
  });

  it('see excursion and port speed at the set drive', () => {
    const loud = { ...room, chain: { ...room.chain, driveV: 28 } };
    expect(codes(loud)).toEqual(expect.arrayContaining(['finding.excursion', 'finding.port-loud']));
    const quiet = { ...room, chain: { ...room.chain, driveV: 0.5 } };
    expect(codes(quiet)).not.toContain('finding.excursion');
    expect(codes(quiet)).not.toContain('finding.port-careful');
  });

  it('see power beyond a rating', () => {
    const loud = { ...room, chain: { ...room.chain, driveV: 40 } };
    expect(codes(loud)).toEqual(expect.arrayContaining(['finding.resistor-power', 'finding.coil-power']));
  });

  it('see what does not fit the cabinet', () => {
    const { enclosure } = room;
    const at = (changes: object): Project => ({
      ...room,
      enclosure: { ...enclosure, mounts: enclosure.mounts.map((m) => (m.partId === 'LS1' ? { ...m, ...changes } : m)) },
    });
    expect(codes(at({ xM: 0.05 }))).toContain('build.frame-over-edge');
    expect(codes(at({ yM: 0.7 }))).toContain('build.cutouts-overlap');
    expect(codes({ ...room, enclosure: { ...enclosure, depthM: 0.11 } })).toEqual(
      expect.arrayContaining(['build.magnet-hits-back', 'build.port-through-back']),
    );
    const chambers = enclosure.chambers.map((c) =>
      c.id === 'low' ? { ...c, volume: { kind: 'geometry' as const, bottomM: 0.018, topM: 0.7, depthM: null } } : c,
    );
    expect(codes({ ...room, enclosure: { ...enclosure, chambers } })).toContain('build.chambers-overlap');
    for (const name of ['reading-room', 'kitchen-shelf', 'port-lesson'] as const) {
      expect(codes(demoProject(name)).filter((code) => code.startsWith('build.'))).toEqual([]);
    }
  });

  it('see a driver that is never heard, and a port that cuts into a panel', () => {
    expect(codes(withPart(room, 'C5', { farad: 5e-9 }))).toContain('finding.silent-way');
    expect(codes(room)).not.toContain('finding.silent-way');
    const lowered = room.enclosure.ports.map((p) => ({ ...p, yM: 0.02 }));
    expect(codes({ ...room, enclosure: { ...room.enclosure, ports: lowered } })).toContain('build.cutout-in-edge');
  });

  it('say both numbers where a data sheet contradicts itself', () => {
    const drivers = room.drivers.map((d) => (d.id === 'woofer' ? { ...d, entered: { ...d.entered, qts: 0.6 } } : d));
    const finding = evaluated({ ...room, drivers }).findings.find((f) => f.place.id === 'woofer');
    expect(finding).toBeDefined();
    expect(word(finding!).sentence).toMatch(/0\.6/);
    expect(word(finding!).sentence).toMatch(/0\.36/);
  });

  it('have a sentence and a remedy each, with no gap in either', () => {
    const wild = { ...room, chain: { ...room.chain, driveV: 60 }, enclosure: { ...room.enclosure, depthM: 0.11 } };
    const { findings } = evaluated(wild);
    expect(findings.length).toBeGreaterThan(5);
    for (const finding of findings) {
      const { sentence, remedy } = word(finding);
      expect(`${sentence} ${remedy}`).not.toMatch(/NaN|undefined|null|Infinity|no description/);
    }
  });
});

describe('problems', () => {
  it('name a chamber without air, a driver without numbers, a network without a source', () => {
    const chambers = room.enclosure.chambers.map((c) => (c.id === 'low' ? { ...c, bracesM3: 0.2 } : c));
    expect(problemCodes({ ...room, enclosure: { ...room.enclosure, chambers } })).toEqual(['speaker.no-volume-left']);
    const drivers = room.drivers.map((d) => (d.id === 'mid' ? { ...d, entered: { reOhm: 5 } } : d));
    const result = evaluateProject({ ...room, drivers }, undefined, laterChecks);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problems[0]!.place).toMatchObject({ kind: 'driver', id: 'mid' });
    const parts = room.network.parts.filter((p) => p.kind !== 'amplifier');
    expect(problemCodes({ ...room, network: { parts } })).toContain('speaker.no-amplifier');
    expect(problemCodes({ ...room, enclosure: { ...room.enclosure, panelM: 0.2 } })).toContain('speaker.no-inside');
  });

  it('name a listening point inside the cabinet', () => {
    const inside = { ...room.listening, distanceM: 0.2, horizontalDeg: 180 };
    expect(problemCodes({ ...room, listening: inside })).toContain('speaker.listener-inside');
    expect(problemCodes({ ...room, listening: { ...inside, distanceM: 2 } })).toEqual([]);
  });

  it('name a floating part by its node, and a short across the amplifier by the link that makes it', () => {
    const floating = evaluateProject(withPart(room, 'R1', { nodes: ['nowhere', 'else'] }), undefined, laterChecks);
    expect(floating.ok ? null : floating.problems.map((p) => [p.code, p.place.id])).toEqual([
      ['circuit.floating-node', 'nowhere'],
    ]);
    const parts = [...room.network.parts, { kind: 'jumper' as const, id: 'J9', nodes: ['in', '0'] as const, note: '' }];
    const bare = room.chain.amplifiers.map((a) => ({ ...a, outputResistanceOhm: 0, cableOhm: 0 }));
    for (const amplifiers of [room.chain.amplifiers, bare]) {
      const short = evaluateProject(
        { ...room, network: { parts }, chain: { ...room.chain, amplifiers } },
        undefined,
        laterChecks,
      );
      expect(short.ok ? null : short.problems.map((p) => [p.code, p.place.id, p.values.by])).toEqual([
        ['circuit.source-shorted', 'V1', 'J9'],
      ]);
    }
  });
});
