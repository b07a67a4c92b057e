import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { capacitorPart, IN, inductorPart, notPositive, OUT, type Section } from './section.ts';

/** Element constants k as handbooks print them: L = k R/f and C = k/(R f). */
export interface ThreeWayConstants {
  /** Series coil and capacitor of the middle way, f the geometric mean of the two crossover frequencies. */
  readonly midInductor: number;
  readonly midCapacitor: number;
  /** Series capacitor of the high way, f the upper crossover frequency. */
  readonly highCapacitor: number;
  /** Series coil of the low way, f the lower crossover frequency. */
  readonly lowInductor: number;
}

/**
 * First-order three-way all-pass network with the crossover frequencies fH/fL apart. The middle way is a series coil and
 * capacitor with real poles at both: L = R/(2π (fL+fH)), C = (fL+fH)/(2π R fL fH); the outer ways are first-order.
 * Source: R. M. Bullock, "Passive Three-Way All-Pass Crossover Networks", JAES 32 (9), 1984.
 * @example firstOrderThreeWayConstants(10).midInductor // 0.0458
 */
export function firstOrderThreeWayConstants(frequencyRatio: number): ThreeWayConstants {
  const sum = Math.sqrt(frequencyRatio) + 1 / Math.sqrt(frequencyRatio);
  const firstOrder = 1 / (2 * Math.PI);
  return {
    midInductor: firstOrder / sum,
    midCapacitor: firstOrder * sum,
    highCapacitor: firstOrder,
    lowInductor: firstOrder,
  };
}

/**
 * The three sections for the load of each way. With all three in the same polarity the middle way is in phase with both.
 * Problems: `circuit.section-value`, `circuit.section-band` where the frequencies are not in order.
 * @example firstOrderThreeWay({ lowHz: 300, highHz: 3000, lowOhm: 6, midOhm: 6, highOhm: 6 })
 */
export function firstOrderThreeWay(values: {
  readonly lowHz: number;
  readonly highHz: number;
  readonly lowOhm: number;
  readonly midOhm: number;
  readonly highOhm: number;
}): Result<{ readonly low: Section; readonly mid: Section; readonly high: Section }> {
  const problems = notPositive(values);
  const { lowHz, highHz, lowOhm, midOhm, highOhm } = values;
  if (problems.length === 0 && lowHz >= highHz) {
    problems.push(problem('circuit.section-band', { kind: 'field', field: 'highHz' }, { lowHz, highHz }));
  }
  if (problems.length > 0) return fail(...problems);
  const k = firstOrderThreeWayConstants(highHz / lowHz);
  const middleHz = Math.sqrt(lowHz * highHz);
  const words = {
    source: 'R. M. Bullock, JAES 32 (9), 1984',
    assumes:
      'Resistive loads, drivers that are flat well beyond their bands and at the same distance. First-order slopes load the ' +
      'middle and high drivers far below their crossover: check excursion and power.',
  };
  return succeed({
    low: { parts: [inductorPart('L1', [IN, OUT], (k.lowInductor * lowOhm) / lowHz)], ...words },
    mid: {
      parts: [
        capacitorPart('C1', [IN, '@1'], k.midCapacitor / (midOhm * middleHz)),
        inductorPart('L1', ['@1', OUT], (k.midInductor * midOhm) / middleHz),
      ],
      ...words,
    },
    high: { parts: [capacitorPart('C1', [IN, OUT], k.highCapacitor / (highOhm * highHz))], ...words },
  });
}
