import { describe, expect, it } from 'vitest';
import type { Context } from '../../../../src/core/design/findings/index.ts';
import { unsuitedBox } from '../../../../src/core/design/findings/unsuitedBox.ts';
import { word } from '../../../../src/core/messages/index.ts';
import type { ModelPort, ModelSpeaker, Radiation, SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { AIR } from '../../acoustics/sweep.ts';

const radiation: Radiation = { distanceM: 2, pistonRadiusM: 0, offAxisDeg: 0, edges: null };
/** Bl sets the Q: 9.2 gives Qts 0.39, 5 gives 1.0. */
const woofer = (blTm: number, changes: Partial<ModelSpeaker> = {}): ModelSpeaker => ({
  partId: 'LS1',
  parameters: {
    reOhm: 5.6,
    leH: 0,
    semiInductance: null,
    blTm,
    mmsKg: 0.03,
    cmsMPerN: 7e-4,
    rmsKgPerS: 1.5,
    sdM2: 0.022,
  },
  chamberId: 'C1',
  radiation,
  measured: null,
  ...changes,
});
const port: ModelPort = {
  id: 'P1',
  chamberId: 'C1',
  areaM2: 0.004,
  effectiveLengthM: 0.2,
  loss: null,
  radiation,
};
const found = (speakers: readonly ModelSpeaker[], ports: readonly ModelPort[] = []) => {
  const model: SpeakerModel = {
    air: AIR,
    amplifiers: [],
    parts: [],
    speakers,
    chambers: [{ id: 'C1', volumeM3: 0.04, leak: { q: 7, atHz: 40 }, absorption: null }],
    ports,
    passiveRadiators: [],
    radiation: 'half-space',
  };
  // The check looks at the model alone.
  return unsuitedBox({ model } as Context);
};

describe('unsuitedBox', () => {
  it('is quiet where the box suits or is possible', () => {
    expect(found([woofer(9.2)], [port])).toEqual([]);
    expect(found([woofer(9.2)])).toEqual([]);
    expect(found([woofer(4.5, { chamberId: null })])).toEqual([]);
  });

  it('names a vented box that no alignment has for the driver, and what would suit it', () => {
    const [flaw, ...rest] = found([woofer(4.5)], [port]);
    expect(rest).toEqual([]);
    expect(flaw!.severity).toBe('note');
    const { sentence, remedy } = word(flaw!);
    expect(sentence).toMatch(
      /^LS1 is a poor match for its vented box\. Qts = 1\.\d has no flat vented box with QL = 7/,
    );
    expect(remedy).toMatch(/^Its numbers suit an open baffle; keep this box only with another driver/);
  });

  it('judges a sealed box for the bass driver alone, and leaves a stuffed vent alone', () => {
    const high = woofer(4.5);
    expect(found([high]).map(({ values }) => values.kind)).toEqual(['sealed']);
    const low = woofer(9.2, { partId: 'LS2' });
    const deep = { ...low, parameters: { ...low.parameters, mmsKg: 0.12, blTm: 18 } };
    expect(found([high, deep])).toEqual([]);
    expect(found([high], [{ ...port, stuffingPaSPerM3: 1e4 }])).toEqual([]);
  });

  it('knows an open baffle by its radiation', () => {
    const dipole = {
      extraM: Float64Array.of(0.4),
      weights: Float64Array.of(1),
      spreadM: Float64Array.of(0.1),
      side: 1 as const,
    };
    const open = woofer(9.2, { chamberId: null, radiation: { ...radiation, dipole } });
    expect(word(found([open])[0]!).sentence).toMatch(/poor match for the open baffle\. Qts = 0\.39/);
  });
});
