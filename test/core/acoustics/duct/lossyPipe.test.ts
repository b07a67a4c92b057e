import { describe, expect, it } from 'vitest';
import {
  chamberComplianceM3PerPa,
  FREE_END_RADII,
  type LossyPipe,
  lossyPipe,
  type OpenEnd,
  PISTON_END_RADII,
  pipeResonancesHz,
  portAdmittance,
  portLossResistancePaSPerM3,
  roundDuct,
  viscousDepthM,
} from '../../../../src/core/acoustics/index.ts';
import { add, type Complex, divide, magnitude, multiply, reciprocal } from '../../../../src/core/math/index.ts';
import { admittanceAt } from '../sweep.ts';
import { apart, STILL_AIR } from './integrate.ts';

const RADIUS_M = 0.035;
const OWN_M = 0.2;
const INNER_M = FREE_END_RADII * RADIUS_M;
const EFFECTIVE_M = OWN_M + INNER_M + PISTON_END_RADII * RADIUS_M;
const port = {
  section: roundDuct(RADIUS_M),
  count: 1,
  effectiveLengthM: EFFECTIVE_M,
  outerEnd: 'flanged' as OpenEnd,
  resistancePaSPerM3: 0,
};
const made = (pipe: typeof port): LossyPipe => {
  const found = lossyPipe(pipe, STILL_AIR);
  if (found === null) throw new Error('no pipe');
  return found;
};

/** Flow into the pipe and out of its mouth for 1 Pa in the chamber, node by node. */
const flowsAt = (
  pipe: LossyPipe,
  frequenciesHz: readonly number[],
): { readonly into: Complex; readonly out: Complex }[] => {
  const [between, near, far, mouth] = [pipe.duct.between, pipe.duct.nearShunt, pipe.duct.farShunt, pipe.mouth].map(
    (y) => admittanceAt(y, frequenciesHz),
  );
  return frequenciesHz.map((_, i) => {
    const p2 = divide(between![i]!, add(between![i]!, add(far![i]!, mouth![i]!)));
    const through = multiply(between![i]!, { re: 1 - p2.re, im: -p2.im });
    return { into: add(near![i]!, through), out: multiply(p2, mouth![i]!) };
  });
};

describe('lossyPipe', () => {
  it('is the lumped port well below its pipe resonances: mass greater by (kL)²/3 and the walls’ share d/a, to a fifth of that', () => {
    const lumped = portAdmittance(
      { areaM2: Math.PI * RADIUS_M ** 2, effectiveLengthM: EFFECTIVE_M, loss: null },
      0.03,
      STILL_AIR,
    );
    const frequencies = [20, 35, 60];
    const wanted = admittanceAt(lumped, frequencies);
    for (const [i, { into, out }] of flowsAt(made(port), frequencies).entries()) {
      const omega = 2 * Math.PI * frequencies[i]!;
      const more = ((omega / 343.2) * EFFECTIVE_M) ** 2 / 3 + viscousDepthM(STILL_AIR, omega) / RADIUS_M;
      const excess = reciprocal(into).im / reciprocal(wanted[i]!).im - 1;
      expect(Math.abs(excess / more - 1)).toBeLessThan(0.2);
      expect(apart(into, out)).toBeLessThan(0.04);
    }
  });

  it('has the stated loss on top of its walls’', () => {
    const resistance = portLossResistancePaSPerM3({ q: 30, atHz: 38 }, chamberComplianceM3PerPa(0.04, STILL_AIR));
    const [bare] = flowsAt(made(port), [38]);
    const [lossy] = flowsAt(made({ ...port, resistancePaSPerM3: resistance }), [38]);
    const added = reciprocal(lossy!.into).re - reciprocal(bare!.into).re;
    // A resistance along a pipe counts a little more than one at its end: (kL)² of 3 %.
    expect(Math.abs(added / resistance - 1)).toBeLessThan(0.03);
  });

  it('resonates near c/2 over its length with end corrections, which shrink as it rises: 692 and 1424 Hz (0.5 %)', () => {
    const resonances = pipeResonancesHz({ radiusM: RADIUS_M, lengthM: OWN_M, ends: ['free', 'flanged'] }, 2, 343.2);
    expect(Math.abs(resonances[0]! / 692 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(resonances[1]! / 1424 - 1)).toBeLessThan(5e-3);
    // Low-frequency corrections give 683 and 1366.
    expect(343.2 / 2 / EFFECTIVE_M).toBeCloseTo(683, 0);
    const frequencies = Array.from({ length: 3000 }, (_, i) => 400 + i * 0.4);
    const into = flowsAt(made(port), frequencies).map((flow) => magnitude(flow.into));
    const peaks = frequencies.filter(
      (_, i) => into[i]! > (into[i - 1] ?? Infinity) && into[i]! > (into[i + 1] ?? Infinity),
    );
    // The inner correction stays at its low-frequency length: some 1 to 2 % low.
    expect(Math.abs(peaks[0]! / resonances[0]! - 1)).toBeLessThan(0.015);
    expect(Math.abs(peaks[1]! / resonances[1]! - 1)).toBeLessThan(0.03);
  });

  it('loses what its walls and its mouth take: what goes in as power comes out as radiation and friction, never less', () => {
    for (const f of [30, 200, 690, 1400, 3000]) {
      const [{ into, out }] = flowsAt(made(port), [f]) as [{ into: Complex; out: Complex }];
      const mouth = admittanceAt(made(port).mouth, [f])[0]!;
      const radiated = (magnitude(out) ** 2 * mouth.re) / magnitude(mouth) ** 2;
      expect(into.re).toBeGreaterThan(radiated);
    }
  });

  it('of two ports is twice the flow of one, the resistance being of both together', () => {
    const one = flowsAt(made({ ...port, resistancePaSPerM3: 400 }), [38, 700]);
    const two = flowsAt(made({ ...port, count: 2, resistancePaSPerM3: 200 }), [38, 700]);
    for (const [i, { out }] of two.entries())
      expect(apart(out, { re: 2 * one[i]!.out.re, im: 2 * one[i]!.out.im })).toBeLessThan(1e-12);
  });

  it('is none where the mouth alone is the whole length', () => {
    expect(lossyPipe({ ...port, effectiveLengthM: 0.02 }, STILL_AIR)).toBeNull();
    expect(lossyPipe({ ...port, outerEnd: 'free', effectiveLengthM: 0.02 }, STILL_AIR)).toBeNull();
  });
});
