import { describe, expect, it } from 'vitest';
import { portLengthForTuning, tuningForPortLength } from '../../../src/core/acoustics/port/portTuning.ts';
import { flatVentedAlignment } from '../../../src/core/design/alignments/flatVentedAlignment.ts';
import { word } from '../../../src/core/messages/word.ts';

const SOUND_SPEED = 344;
const VOLUME_M3 = 0.02;
const WISHED_HZ = 200;
const port = (diameterM: number, count = 1) =>
  ({
    shape: { kind: 'round', diameterM },
    count,
    lengthM: 0,
    innerEnd: 'free',
    outerEnd: 'flanged',
  }) as const;

describe('what to do about a section that cannot reach a tuning', () => {
  const found = portLengthForTuning(port(0.03), WISHED_HZ, VOLUME_M3, SOUND_SPEED);
  const remedy = found.ok ? '' : word(found.problems[0]!).remedy;
  const number = (pattern: RegExp) => Number(pattern.exec(remedy)?.[1]);

  it('names a section, a number of ports and a volume, each of which just reaches it', () => {
    const section = number(/over ([\d.]+) times the cross-section/);
    const many = number(/over ([\d.]+) times as many/);
    const share = number(/under ([\d.]+) % of its volume/) / 100;
    const reached = [
      tuningForPortLength(port(0.03 * Math.sqrt(section)), VOLUME_M3, SOUND_SPEED),
      tuningForPortLength(port(0.03, many), VOLUME_M3, SOUND_SPEED),
      tuningForPortLength(port(0.03), VOLUME_M3 * share, SOUND_SPEED),
    ];
    for (const tuningHz of reached) {
      expect(tuningHz).toBeGreaterThanOrEqual(WISHED_HZ);
      // Each factor is rounded away from the wish to a tenth, or its share to a tenth of a per cent.
      expect(tuningHz).toBeLessThan(WISHED_HZ * 1.05);
    }
  });
});

describe('what to do without a flat vented box', () => {
  const said = (qts: number, ql: number) => {
    const found = flatVentedAlignment({ qts, fsHz: 30, vasM3: 0.05 }, ql);
    if (found.ok) throw new Error(`a box for Qts ${qts}, QL ${ql}`);
    return word(found.problems[0]!);
  };
  it('depends on which end of the range the driver is beyond', () => {
    expect(said(0.8, 7).remedy).toMatch(/^Take the port out for a sealed box, where the Qtc will lie above 0\.8/);
    expect(said(0.1, 7).remedy).toMatch(/higher Qts/);
    expect(said(0.1, 7).remedy).not.toMatch(/[Ss]eal/);
    expect(said(0.8, 7).sentence).toMatch(/it works from 0\.15 to 0\.608\.$/);
  });
  it('does not offer an empty range where the leak alone forbids it', () => {
    const { sentence, remedy } = said(0.4, 1);
    expect(sentence).toBe('No flat vented box exists with a leak of QL = 1.0.');
    expect(remedy).toMatch(/^State a higher QL/);
  });
});
