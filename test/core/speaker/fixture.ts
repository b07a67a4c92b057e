import type { Part } from '../../../src/core/circuit/part.ts';
import type { DriverParameters, ModelSpeaker, SpeakerModel } from '../../../src/core/speaker/model.ts';
import { pointSource } from '../../../src/core/speaker/pointSource.ts';

/** Invented drivers for tests. */
export const woofer: DriverParameters = {
  reOhm: 5.6,
  leH: 0.0005,
  semiInductance: null,
  blTm: 7.8,
  mmsKg: 0.028,
  cmsMPerN: 0.00085,
  rmsKgPerS: 1.3,
  sdM2: 0.0215,
};
export const tweeter: DriverParameters = {
  reOhm: 5.2,
  leH: 0.00003,
  semiInductance: { kOhmSn: 0.004, exponent: 0.6 },
  blTm: 3.3,
  mmsKg: 0.00035,
  cmsMPerN: 0.00012,
  rmsKgPerS: 0.8,
  sdM2: 0.00075,
};

export const speakerAt = (
  partId: string,
  parameters: DriverParameters,
  chamberId: string | null,
  distanceM = 1,
): ModelSpeaker => ({ partId, parameters, chamberId, radiation: pointSource(distanceM), measured: null });

export const amplifierPart: Part = { kind: 'amplifier', id: 'V1', nodes: ['in', '0'], note: '' };
export const speakerPart = (id: string, plus = 'in', minus = '0'): Part => ({
  kind: 'speaker',
  id,
  nodes: [plus, minus],
  note: '',
  driverId: id,
});

export const air = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };

/** One woofer in a vented chamber of 35 L with leak, absorption and port loss. */
export const vented: SpeakerModel = {
  air,
  amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.1 }],
  parts: [amplifierPart, speakerPart('LS1')],
  speakers: [speakerAt('LS1', woofer, 'low')],
  chambers: [{ id: 'low', volumeM3: 0.035, leak: { q: 7, atHz: 38 }, absorption: { q: 50, atHz: 38 } }],
  ports: [
    {
      id: 'P1',
      chamberId: 'low',
      areaM2: 0.0038,
      effectiveLengthM: 0.23,
      loss: { q: 40, atHz: 38 },
      radiation: pointSource(1.2),
    },
  ],
  passiveRadiators: [],
  radiation: 'half-space',
};

/** A small two-way: series coil and capacitor, L-pad, both drivers on one amplifier. */
export const twoWay: SpeakerModel = {
  ...vented,
  parts: [
    amplifierPart,
    { kind: 'inductor', id: 'L1', nodes: ['in', 'w'], note: '', henry: 0.0012, dcrOhm: 0.3, coreLossTangent: 0.01 },
    { kind: 'capacitor', id: 'C1', nodes: ['w', '0'], note: '', farad: 15e-6, esrOhm: 0.05 },
    { kind: 'capacitor', id: 'C2', nodes: ['in', 't'], note: '', farad: 6.8e-6, esrOhm: 0.03 },
    { kind: 'inductor', id: 'L2', nodes: ['t', '0'], note: '', henry: 0.0003, dcrOhm: 0.25, coreLossTangent: 0 },
    { kind: 'resistor', id: 'R1', nodes: ['t', 'u'], note: '', ohm: 2.2, ratedPowerW: 10 },
    speakerPart('LS1', 'w', '0'),
    speakerPart('LS2', '0', 'u'),
  ],
  speakers: [speakerAt('LS1', woofer, 'low'), speakerAt('LS2', tweeter, null, 0.98)],
};
