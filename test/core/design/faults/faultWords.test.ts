import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../../src/core/design/faults/fault.ts';
import { faultKey } from '../../../../src/core/design/faults/fault.ts';
import { faultPriors } from '../../../../src/core/design/faults/faultPriors.ts';
import { faultProblem } from '../../../../src/core/design/faults/faultProblem.ts';
import { fittedValue } from '../../../../src/core/design/faults/fittedValue.ts';
import { rebuilt } from '../../../../src/core/design/faults/hypothesis.ts';
import { measurementProblem } from '../../../../src/core/design/faults/measurementProblem.ts';
import { singleFaults } from '../../../../src/core/design/faults/singleFaults.ts';
import { word } from '../../../../src/core/messages/word.ts';
import { demoHypothesis } from './demoBuild.ts';

const { model, healthy } = demoHypothesis('reading-room', 12);
const faults = singleFaults(model, healthy.build);

/** The sentence of a fault as if it had been fitted at its nominal size. */
function sentenceOf(fault: Fault): string {
  const hypothesis = rebuilt(healthy, [fault], model);
  const count = hypothesis.unknowns.length;
  const fit = { logs: new Float64Array(count), sdLogs: new Float64Array(count).fill(0.02) };
  const candidate = { hypothesis, logPrior: 0, fit: { ...fit, cost: 0, misfit: 0, logEvidence: 0, converged: true } };
  const { sentence, remedy } = word(faultProblem(fault, fittedValue(fault, candidate, model), model));
  return `${sentence} ${remedy}`;
}

describe('single faults', () => {
  it('are of every kind that the design can have, each once', () => {
    expect(new Set(faults.map(({ kind }) => kind)).size).toBe(14);
    expect(new Set(faults.map(faultKey)).size).toBe(faults.length);
  });

  it('have a sentence each, with nothing missing in it', () => {
    for (const fault of faults) {
      const text = sentenceOf(fault);
      expect(text, faultKey(fault)).not.toMatch(/undefined|NaN|not a number|no description/);
      expect(text.length).toBeGreaterThan(60);
    }
    expect(sentenceOf({ kind: 'part-value', partId: 'C2' })).toContain('22 µF instead of 22 µF');
    expect(sentenceOf({ kind: 'driver-resonance', partId: 'LS1' })).toContain('31 Hz in free air instead of 31 Hz');
    expect(sentenceOf({ kind: 'wrong-node', partId: 'R4', end: 1, node: '0' })).toContain(
      'the return instead of point “t3”',
    );
  });

  it('share what is believed beforehand: healthy, one fault and two add up to 1', () => {
    const priors = faultPriors(faults);
    const single = faults.reduce((sum, fault) => sum + Math.exp(priors.logSingle(fault)), 0);
    let double = 0;
    faults.forEach((first, i) => {
      for (let j = 0; j < i; j++) double += Math.exp(priors.logDouble(first, faults[j]!));
    });
    const same = faults.reduce((sum, fault) => sum + Math.exp(priors.logDouble(fault, fault)) / 2, 0);
    expect(Math.exp(priors.logHealthy) + single + double + same).toBeCloseTo(1, 9);
  });
});

describe('measurements', () => {
  it('have a sentence each', () => {
    const kinds = [
      'driver-unplugged',
      'at-driver',
      'link-off',
      'near-field',
      'cone-direction',
      'part-with-meter',
    ] as const;
    for (const kind of kinds) expect(word(measurementProblem({ kind, partId: 'LS1' })).sentence).toMatch(/\bLS1\b/);
    const look = { kind: 'continuity', partId: 'R4', end: 0, node: 't3' } as const;
    expect(word(measurementProblem(look)).sentence).toContain('R4 is joined to point “t3”');
  });
});
