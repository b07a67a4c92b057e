import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BoxKind, suitability } from '../../../src/core/design/suitability.ts';
import { word } from '../../../src/core/messages/index.ts';

const verdicts = (qts: number, qes: number) =>
  Object.fromEntries(
    suitability({ fsHz: 33, qes, qts, vasM3: 0.057 }, 7).map(({ kind, verdict }) => [kind, verdict]),
  ) as Record<BoxKind, string>;

describe('suitability', () => {
  it('follows EBP and Qts as the trade does (common practice, no source)', () => {
    expect(verdicts(0.3, 0.32)).toEqual({
      sealed: 'possible',
      vented: 'suits',
      'passive-radiator': 'suits',
      'band-pass': 'suits',
      'open-baffle': 'poor',
    });
    expect(verdicts(0.5, 0.8)).toMatchObject({ sealed: 'suits', vented: 'possible', 'open-baffle': 'possible' });
    expect(verdicts(1.2, 1.5)).toEqual({
      sealed: 'poor',
      vented: 'poor',
      'passive-radiator': 'poor',
      'band-pass': 'poor',
      'open-baffle': 'suits',
    });
  });

  it('gives its numbers in the reason', () => {
    const [sealed, vented] = suitability({ fsHz: 33, qes: 0.4, qts: 0.367346939, vasM3: 0.057 }, 7);
    expect(word(vented!.reason).sentence).toBe('Flat in 37.3 L tuned to 36 Hz, from 38.9 Hz; fs/Qes (EBP) = 82.5 Hz.');
    expect(word(sealed!.reason).sentence).toMatch(/^Flat in a sealed 21\.1 L from 63\.5 Hz/);
  });

  it('answers for any numbers, in whole sentences, and never throws (seed 106)', () => {
    const wild = fc.oneof(
      fc.double({ min: -3, max: 3, noNaN: true }).map((e) => 10 ** e),
      fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e300),
    );
    fc.assert(
      fc.property(wild, wild, wild, wild, wild, (fsHz, qes, qts, vasM3, ql) => {
        const all = suitability({ fsHz, qes, qts, vasM3 }, ql);
        expect(all).toHaveLength(5);
        for (const { reason } of all) {
          const { sentence, remedy } = word(reason);
          expect(`${sentence} ${remedy}`).not.toMatch(/NaN|undefined|Infinity|no description/);
        }
      }),
      { seed: 106, numRuns: 600 },
    );
  });
});
