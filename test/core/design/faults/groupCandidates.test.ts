import { describe, expect, it } from 'vitest';
import { type Candidate, fitHypothesis, solverOf } from '../../../../src/core/design/faults/candidate.ts';
import { type Fault, faultKey } from '../../../../src/core/design/faults/fault.ts';
import { groupCandidates } from '../../../../src/core/design/faults/groupCandidates.ts';
import { rebuilt } from '../../../../src/core/design/faults/hypothesis.ts';
import type { ImpedanceData } from '../../../../src/core/design/faults/impedanceData.ts';
import { nextMeasurement } from '../../../../src/core/design/faults/nextMeasurement.ts';
import { reachableFrom } from '../../../../src/core/design/faults/reachableFrom.ts';
import { demoHypothesis } from './demoBuild.ts';

const { model, healthy } = demoHypothesis('kitchen-shelf', 64);
const NOISE = 0.01;

/** Readings without noise of a fault in a build with nominal values. */
function readingsOf(faults: readonly Fault[]): ImpedanceData {
  const built = rebuilt(healthy, faults, model);
  const { re, im } = solverOf(built).solve(new Float64Array(built.unknowns.length)).z;
  return {
    omegas: healthy.build.omegas,
    logSizes: re.map((x, f) => Math.log(Math.hypot(x, im[f]!))),
    phasesRad: re.map((x, f) => Math.atan2(im[f]!, x)),
    noise: NOISE,
  };
}

const fitted = (faults: readonly Fault[], data: ImpedanceData): Candidate => {
  const hypothesis = rebuilt(healthy, faults, model);
  const fit = fitHypothesis(hypothesis, data, new Map(), { perStart: 3, more: 12, mostStarts: 6 });
  return { hypothesis, logPrior: 0, fit };
};
const keysOf = (groups: readonly (readonly Candidate[])[]): string[][] =>
  groups.map((group) => group.map(({ hypothesis }) => hypothesis.faults.map(faultKey).join(' + ')).sort());

describe('groups', () => {
  const open: Fault = { kind: 'part-open', partId: 'R2' };
  const data = readingsOf([open]);
  const rough = { data, base: healthy, share: 1 };

  it('hold what an impedance cannot tell apart: a resistor left out, and one of a value without end', () => {
    const candidates = [
      open,
      { kind: 'part-value', partId: 'R2' } as const,
      { kind: 'part-decade', partId: 'R2', factor: 10 } as const,
    ];
    const groups = groupCandidates(
      candidates.map((fault) => fitted([fault], data)),
      rough,
      model,
    );
    const together = keysOf(groups).find((keys) => keys.includes('part-open R2'))!;
    expect(together).toContain('part-value R2');
  });

  it('hold a bridge across a resistor, and one of next to no value', () => {
    const short: Fault = { kind: 'part-short', partId: 'R1' };
    const both: Fault[] = [short, { kind: 'part-value', partId: 'R1' }];
    const groups = groupCandidates(
      both.map((fault) => fitted([fault], readingsOf([short]))),
      { ...rough, data: readingsOf([short]) },
      model,
    );
    expect(groups.length).toBe(1);
  });

  it('keep apart what differs by more than the noise', () => {
    const faults: Fault[] = [open, { kind: 'part-open', partId: 'R1' }, { kind: 'driver-open', partId: 'LS2' }];
    // As likely as one another, so that their impedances alone decide.
    const even = faults.map((fault, k) => {
      const candidate = fitted([fault], data);
      return { ...candidate, fit: { ...candidate.fit, logEvidence: -k } };
    });
    const groups = groupCandidates(even, rough, model);
    expect(groups.map((group) => group.length)).toEqual([1, 1, 1]);
    expect(keysOf(groups)[0]).toEqual(['part-open R2']);
  });
});

describe('the next measurement', () => {
  it('tells two explanations apart by more than the noise, and takes the quickest that decides', () => {
    const faults: Fault[] = [
      { kind: 'part-open', partId: 'L2' },
      { kind: 'driver-open', partId: 'LS2' },
    ];
    const [a, b] = faults.map((fault) => fitted([fault], readingsOf([faults[0]!]))) as [Candidate, Candidate];
    const next = nextMeasurement(a, b, healthy, model, NOISE)!;
    expect(next.difference).toBeGreaterThan(25);
    expect(['driver-unplugged', 'at-driver']).toContain(next.measurement.kind);
  });

  it('is a cell at the leads where a driver may be reversed, and nothing between equals', () => {
    const data = readingsOf([]);
    const reversed = fitted([{ kind: 'driver-reversed', partId: 'LS2' }], data);
    const none = fitted([], data);
    expect(nextMeasurement(reversed, none, healthy, model, NOISE)!.measurement).toEqual({
      kind: 'cone-direction',
      partId: 'LS2',
    });
    expect(nextMeasurement(none, none, healthy, model, NOISE)).toBeNull();
  });
});

describe('what hangs on a channel', () => {
  it('ends at the return and at amplifiers', () => {
    const base = { note: '', kind: 'resistor', ohm: 1, ratedPowerW: null } as const;
    const parts = [
      { note: '', kind: 'amplifier', id: 'V1', nodes: ['a', '0'] } as const,
      { note: '', kind: 'amplifier', id: 'V2', nodes: ['c', '0'] } as const,
      { ...base, id: 'R1', nodes: ['a', 'b'] } as const,
      { ...base, id: 'R2', nodes: ['b', '0'] } as const,
      { ...base, id: 'R3', nodes: ['c', '0'] } as const,
    ];
    expect([...reachableFrom(parts, 'a')].sort()).toEqual(['R1', 'R2']);
    expect([...reachableFrom(parts, 'c')]).toEqual(['R3']);
  });
});
