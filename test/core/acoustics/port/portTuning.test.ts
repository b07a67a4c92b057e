import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  helmholtzHz,
  helmholtzNeckM,
  leastPortAreaM2,
  leastPortDiameterM,
  machNumber,
  neckLengthM,
  portAdmittance,
  portAirSpeedMPerS,
  portDisplacementM3,
  portEffectiveLengthM,
  portLengthForTuning,
  portSectionM2,
  portToConeFlow,
  roundPortLength,
  tuningForPortLength,
  volumeVelocityForPressure,
} from '../../../../src/core/acoustics/index.ts';
import { findRoot, magnitude } from '../../../../src/core/math/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR, admittanceAt } from '../sweep.ts';

const c = AIR.soundSpeedMPerS;
const tube = { shape: { kind: 'round', diameterM: 0.07 }, innerEnd: 'free', outerEnd: 'flanged', count: 1 } as const;

describe('port length and tuning', () => {
  it('gives the worked tuning of a 70 mm port, 0.2 m long, in 30 L: 39.1 Hz with one flanged and one free end', () => {
    // (c/2π) √(S/(V (L + (0.8217 + 0.6127) a))), by hand.
    const lengthM = 0.2 + (0.82167 + 0.612701) * 0.035;
    const byHand = (c / (2 * Math.PI)) * Math.sqrt((Math.PI * 0.035 ** 2) / (0.03 * lengthM));
    expect(tuningForPortLength({ ...tube, lengthM: 0.2 }, 0.03, c)).toBeCloseTo(byHand, 10);
    expect(Math.abs(byHand - 39.1)).toBeLessThan(0.1);
  });

  it('invert one another for any port (seed 52)', () => {
    const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    const shape = fc.oneof(
      number(0.03, 0.15).map((diameterM) => ({ kind: 'round', diameterM }) as const),
      fc
        .tuple(number(0.05, 0.3), number(0.01, 0.05))
        .map(([widthM, heightM]) => ({ kind: 'slot', widthM, heightM }) as const),
    );
    const end = fc.constantFrom('free', 'flanged', 'on-wall');
    fc.assert(
      fc.property(
        shape,
        end,
        end,
        fc.integer({ min: 1, max: 4 }),
        number(0.01, 0.6),
        number(0.005, 0.2),
        (s, innerEnd, outerEnd, count, lengthM, volumeM3) => {
          const port = { shape: s, innerEnd, outerEnd, count };
          const tuningHz = tuningForPortLength({ ...port, lengthM }, volumeM3, c);
          const back = portLengthForTuning(port, tuningHz, volumeM3, c);
          expect(back.ok && Math.abs(back.value - lengthM) < 1e-10).toBe(true);
        },
      ),
      { seed: 52 },
    );
  });

  it('is where chamber and port branches cancel', () => {
    const lengthM = 0.15;
    const port = {
      areaM2: portSectionM2(tube.shape),
      effectiveLengthM: portEffectiveLengthM({ ...tube, lengthM }),
      loss: null,
    };
    const net = (f: number) =>
      admittanceAt(chamberAdmittance({ volumeM3: 0.04, absorption: null }, AIR), [f])[0]!.im +
      admittanceAt(portAdmittance(port, 0.04, AIR), [f])[0]!.im;
    const found = findRoot(net, 5, 200, 1e-10).x;
    expect(tuningForPortLength({ ...tube, lengthM }, 0.04, c)).toBeCloseTo(found, 7);
  });

  it('tunes lower when ports stand close together', () => {
    const pair = { ...tube, count: 2, lengthM: 0.2 };
    expect(tuningForPortLength({ ...pair, neighbourDistancesM: [0.08] }, 0.05, c)).toBeLessThan(
      tuningForPortLength(pair, 0.05, c),
    );
  });

  it('says when a port is too wide for a tuning, and the highest tuning it could reach', () => {
    const wide = portLengthForTuning({ ...tube, shape: { kind: 'round', diameterM: 0.03 } }, 200, 0.02, c);
    expect(wide.ok).toBe(false);
    if (wide.ok) return;
    const [found] = wide.problems;
    expect(found!.code).toBe('acoustics.port-too-wide');
    const { sentence, remedy } = word(found!);
    expect(sentence).toMatch(/tunes the chamber to \d+ Hz at most, not to 200 Hz/);
    expect(remedy).toContain('wider port');
    const short = tuningForPortLength({ ...tube, shape: { kind: 'round', diameterM: 0.03 }, lengthM: 0 }, 0.02, c);
    expect(found!.values.highestHz).toBeCloseTo(short, 9);
  });
});

describe('helmholtzHz', () => {
  it('gives 136.8 Hz for the examination bottle of half a litre (physics notes, helm-exam)', () => {
    const areaM2 = Math.PI * 0.01 ** 2;
    expect(helmholtzHz({ areaM2, effectiveLengthM: 0.1, volumeM3: 5e-4 }, 343)).toBeCloseTo(136.837, 3);
    expect(helmholtzNeckM({ areaM2, tuningHz: 136.837202, volumeM3: 5e-4 }, 343)).toBeCloseTo(0.1, 8);
  });

  it('counts end corrections in radii of the circle of equal area', () => {
    expect(neckLengthM(Math.PI * 0.02 ** 2, 0.1, [0.85, 0.6])).toBeCloseTo(0.1 + 1.45 * 0.02, 12);
  });
});

describe('port figures', () => {
  it('handbook length: 50 L at 35 Hz with a 100 mm tube needs 0.309 m (worked by hand)', () => {
    const port = { volumeM3: 0.05, tuningHz: 35, diameterM: 0.1, count: 1, endDiameters: 0.732 };
    const { lengthM, effectiveLengthM } = roundPortLength(port, c);
    expect(lengthM).toBeCloseTo((23562.5 * 100) / (35 ** 2 * 50) / 100 - 0.0732, 2);
    expect(effectiveLengthM - lengthM).toBeCloseTo(0.0732, 12);
  });

  it('speed chain of the worked case: 100 dB at 1 m, 30 Hz, 80 mm bore: 15.6 m/s peak, Mach 0.045 (physics notes, 4.5)', () => {
    const flow = volumeVelocityForPressure(2, 30, 1, AIR.densityKgPerM3);
    expect(flow).toBeCloseTo(0.0553664, 6);
    const peak = portAirSpeedMPerS(flow * Math.SQRT2, Math.PI * 0.04 ** 2);
    expect(peak).toBeCloseTo(15.577, 3);
    expect(machNumber(peak, c)).toBeCloseTo(0.0453883, 6);
  });

  it('least size: both forms hold the peak speed near 5 % of the speed of sound at full stroke', () => {
    const [tuningHz, displacementM3] = [30, 180e-6];
    const areaM2 = leastPortAreaM2(tuningHz, displacementM3);
    // Peak flow of the cone ω VD; at the tuning with QL about 7 a port moves several times the cone: the rule assumes 2π/0.8 · VD · fB.
    expect((2 * Math.PI * tuningHz * displacementM3) / areaM2).toBeCloseTo((2 * Math.PI) / 0.8, 12);
    expect((Math.PI / 4) * leastPortDiameterM(tuningHz, displacementM3) ** 2).toBeCloseTo((areaM2 * Math.PI) / 3.2, 12);
  });

  it('flow: at the tuning the port moves QL times what the cone does, an octave below it follows, far above it rests', () => {
    for (const ql of [3, 7, 20]) expect(magnitude(portToConeFlow(1, ql))).toBeCloseTo(ql, 12);
    expect(magnitude(portToConeFlow(1e-4, 7))).toBeCloseTo(1, 6);
    expect(magnitude(portToConeFlow(100, null))).toBeCloseTo(1 / 9999, 12);
  });

  it('displacement: a tube takes its outer section, a slot its bore and one panel', () => {
    expect(portDisplacementM3({ kind: 'round', diameterM: 0.07 }, 0.003, 0.18)).toBeCloseTo(
      (Math.PI / 4) * 0.076 ** 2 * 0.18,
      12,
    );
    expect(portDisplacementM3({ kind: 'slot', widthM: 0.2, heightM: 0.03 }, 0.018, 0.25)).toBeCloseTo(
      0.2 * 0.048 * 0.25,
      12,
    );
  });
});
