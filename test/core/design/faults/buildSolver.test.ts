import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../src/core/design/faults/build.ts';
import { buildLayout } from '../../../../src/core/design/faults/buildLayout.ts';
import { buildSolver } from '../../../../src/core/design/faults/buildSolver.ts';
import { solverOf, startFrom } from '../../../../src/core/design/faults/candidate.ts';
import type { Fault } from '../../../../src/core/design/faults/fault.ts';
import { rebuilt } from '../../../../src/core/design/faults/hypothesis.ts';
import { singleFaults } from '../../../../src/core/design/faults/singleFaults.ts';
import { unknownKey } from '../../../../src/core/design/faults/unknown.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import { plantFault } from '../../../faults/plantFault.ts';
import { randomDesign } from '../../../faults/randomDesign.ts';
import { buildOf, demoHypothesis, demoModel } from './demoBuild.ts';

const DEMOS = ['reading-room', 'kitchen-shelf', 'port-lesson'] as const;
const HZ = sweepGrid(10, 20_000, 60);
const SEED = 4711;

/** Greatest |Z of the build / Z of the simulation - 1|, gear's reach from 20 mΩ to 20 kΩ taken into account. */
function worst(build: Build, model: SpeakerModel): number {
  const z = buildSolver(buildLayout(build, [])).solve(new Float64Array(0)).z;
  const simulation = simulate(model, HZ);
  if (!simulation.ok) throw new Error(JSON.stringify(simulation.problems));
  const { re, im } = simulation.value.amplifiers[0]!.impedance;
  return Math.max(
    ...Array.from(HZ, (_, f) => {
      const size = Math.hypot(re[f]!, im[f]!);
      if (size > 2e4) return Math.hypot(z.re[f]!, z.im[f]!) > 2e4 ? 0 : 1;
      return Math.hypot(z.re[f]! - re[f]!, z.im[f]! - im[f]!) / size;
    }),
  );
}

describe('impedance of a build', () => {
  it.each(DEMOS)('is that of the whole simulation: %s', (name) => {
    // 1 pS from every node, up to 30 Ω: 1e-10.
    expect(worst(buildOf(demoModel(name), HZ), demoModel(name))).toBeLessThan(1e-9);
  });

  it(`is that of the whole simulation for 12 random designs, seed ${SEED}`, () => {
    const random = randomStream(SEED);
    for (let k = 0; k < 12; k++) {
      const model = randomDesign(random);
      expect(worst(buildOf(model, HZ), model)).toBeLessThan(1e-9);
    }
  });

  it('is that of the whole simulation with two woofers on one chamber, one of them turned round', () => {
    const model = demoModel('reading-room');
    const woofer = model.speakers.find(({ partId }) => partId === 'LS1')!;
    const part = model.parts.find(({ id }) => id === 'LS1')!;
    const nodes = [part.nodes[1], part.nodes[0]] as const;
    const second = { ...part, id: 'LS4', nodes };
    const parameters = { ...woofer.parameters, mmsKg: 1.2 * woofer.parameters.mmsKg };
    const twin = {
      ...model,
      parts: [...model.parts, second],
      speakers: [...model.speakers, { ...woofer, partId: 'LS4', parameters }],
    };
    expect(worst(buildOf(twin, HZ), twin)).toBeLessThan(1e-9);
  });

  it.each(DEMOS)('is that of a simulation into which the same fault was put by other means: %s', (name) => {
    const { model, healthy } = demoHypothesis(name);
    const random = randomStream(SEED);
    const sizeless: readonly Fault['kind'][] = [
      'part-open',
      'link-missing',
      'exchanged',
      'wrong-node',
      'driver-open',
      'driver-reversed',
      'port-blocked',
    ];
    const faults = singleFaults(model, healthy.build).filter(({ kind }) => sizeless.includes(kind));
    expect(faults.length).toBeGreaterThan(2);
    const off = faults.filter((fault) => {
      const planted = plantFault(model, fault, random);
      // An open part is 1 GΩ there and nothing here, beside impedances of up to 3 kΩ: 3e-6.
      return worst(rebuilt(healthy, [fault], model).build, planted) > 1e-5;
    });
    expect(off).toEqual([]);
  });

  it('has the slopes that small changes of every value show', () => {
    const { model, healthy } = demoHypothesis('reading-room');
    const whole = rebuilt(
      healthy,
      [{ kind: 'leak', chamberId: 'low' }, { kind: 'leak', chamberId: 'middle' }, { kind: 'cable' }],
      model,
    );
    const solver = solverOf(whole);
    const logs = startFrom(whole, new Map());
    logs.fill(0.03);
    const slopes = solver.solve(logs).slopes.map(({ re, im }) => ({ re: re.slice(), im: im.slice() }));
    const step = 1e-5;
    whole.unknowns.forEach((unknown, k) => {
      const at = (by: number) => {
        const moved = logs.slice();
        moved[k]! += by;
        const { re, im } = solver.solve(moved).z;
        return { re: re.slice(), im: im.slice() };
      };
      const [up, down] = [at(step), at(-step)];
      HZ.forEach((_, f) => {
        const size = Math.log(Math.hypot(up.re[f]!, up.im[f]!) / Math.hypot(down.re[f]!, down.im[f]!)) / (2 * step);
        const angle = (Math.atan2(up.im[f]!, up.re[f]!) - Math.atan2(down.im[f]!, down.re[f]!)) / (2 * step);
        // Central differences: rounding 1e-11 over 1e-5, and the square of the step.
        expect(Math.hypot(size - slopes[k]!.re[f]!, angle - slopes[k]!.im[f]!), unknownKey(unknown)).toBeLessThan(2e-6);
      });
    });
  });

  it('has the flows of the whole simulation', () => {
    const { model, healthy } = demoHypothesis('reading-room');
    const { flows } = solverOf(healthy).solve(new Float64Array(healthy.unknowns.length), true);
    const simulation = simulate(model, HZ);
    if (!simulation.ok) throw new Error('not solved');
    const { current } = simulation.value.amplifiers[0]!;
    healthy.build.drivers.forEach(({ partId }, k) => {
      const { volumeVelocity } = simulation.value.speakers.find((s) => s.partId === partId)!;
      HZ.forEach((_, f) => {
        const i = Math.hypot(current.re[f]!, current.im[f]!);
        const mine = i * Math.hypot(flows[k]!.re[f]!, flows[k]!.im[f]!);
        expect(mine / Math.hypot(volumeVelocity.re[f]!, volumeVelocity.im[f]!)).toBeCloseTo(1, 7);
      });
    });
  });
});
