import type { Part } from '../../../src/core/circuit/part.ts';
import {
  plainAmplifier,
  plainChamber,
  plainEnclosure,
  plainMount,
  plainPort,
} from '../../../src/core/document/plain.ts';
import type { Curve, Project } from '../../../src/core/document/schema.ts';
import { newDriver } from '../../../src/core/document/start/newDriver.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { deepFreeze } from './deepFreeze.ts';

export const resistor = (id: string, nodes: readonly [string, string], ohm = 4.7): Part => ({
  kind: 'resistor',
  id,
  nodes,
  ohm,
  ratedPowerW: 5,
  note: '',
});
export const capacitor = (id: string, nodes: readonly [string, string], farad = 6.8e-6): Part => ({
  kind: 'capacitor',
  id,
  nodes,
  farad,
  esrOhm: 0.05,
  note: '',
});
export const inductor = (id: string, nodes: readonly [string, string], henry = 1e-3): Part => ({
  kind: 'inductor',
  id,
  nodes,
  henry,
  dcrOhm: 0.3,
  coreLossTangent: 0,
  note: '',
});
export const jumper = (id: string, nodes: readonly [string, string]): Part => ({ kind: 'jumper', id, nodes, note: '' });
export const speaker = (id: string, nodes: readonly [string, string], driverId: string): Part => ({
  kind: 'speaker',
  id,
  nodes,
  driverId,
  note: '',
});
export const amplifier = (id: string, nodes: readonly [string, string]): Part => ({
  kind: 'amplifier',
  id,
  nodes,
  note: '',
});

const curve = (id: string, quantity: Curve['quantity'], belongsTo: Curve['belongsTo']): Curve => ({
  id,
  name: id,
  belongsTo,
  quantity,
  frequenciesHz: [20, 200, 2000, 20000],
  magnitudes: [70, 80, 85, 82],
  phasesDeg: null,
  taken: { baffle: 'own', voltageV: 2.83, distanceM: 1 },
  sourceName: `${id}.txt`,
});

/**
 * An invented vented two-way, frozen: `in` feeds a second-order low-pass to the woofer LS1 on node w, and through a
 * jumper to `hi` a second-order high-pass with an L-pad to the tweeter LS2 on node t2, which is reversed.
 */
export const twoWay: Project = deepFreeze({
  ...newProject(),
  name: 'Two-way',
  drivers: [
    { ...newDriver('woofer', 'woofer'), measured: { responseCurveId: 'c1', impedanceCurveId: null, blendHz: 300 } },
    newDriver('tweeter', 'tweeter'),
  ],
  enclosure: {
    widthM: 0.22,
    heightM: 0.4,
    depthM: 0.3,
    panelM: 0.018,
    ...plainEnclosure,
    chambers: [
      {
        id: 'main',
        name: 'Main',
        volume: { kind: 'geometry', bottomM: 0.018, topM: 0.382, depthM: 0.264 },
        bracesM3: 0,
        fillGain: 1,
        leak: null,
        absorption: null,
        ...plainChamber,
      },
      {
        id: 'spare',
        name: 'Spare',
        volume: { kind: 'stated', grossM3: 0.002 },
        bracesM3: 0,
        fillGain: 1,
        leak: null,
        absorption: null,
        ...plainChamber,
      },
    ],
    ports: [
      {
        id: 'port',
        chamberId: 'main',
        shape: { kind: 'round', diameterM: 0.05 },
        count: 1,
        lengthM: 0.118,
        innerEnd: 'free',
        outerEnd: 'flanged',
        wallM: 0.003,
        loss: null,
        ...plainPort,
        face: 'back',
        xM: 0,
        yM: 0.1,
      },
    ],
    mounts: [
      { partId: 'LS1', chamberId: 'main', ...plainMount, xM: 0, yM: 0.15, acousticCentreZM: -0.03 },
      { partId: 'LS2', chamberId: null, ...plainMount, xM: 0, yM: 0.31, acousticCentreZM: 0 },
    ],
  },
  network: {
    parts: [
      amplifier('V1', ['in', '0']),
      inductor('L1', ['in', 'w'], 1.2e-3),
      capacitor('C1', ['w', '0'], 22e-6),
      speaker('LS1', ['w', '0'], 'woofer'),
      jumper('J1', ['in', 'hi']),
      capacitor('C2', ['hi', 't1']),
      inductor('L2', ['t1', '0'], 0.4e-3),
      resistor('R1', ['t1', 't2'], 1),
      resistor('R2', ['t2', '0'], 10),
      speaker('LS2', ['0', 't2'], 'tweeter'),
    ],
  },
  chain: {
    driveV: 2.83,
    amplifiers: [{ id: 'V1', outputResistanceOhm: 0.05, ratedMinimumLoadOhm: 4, cableOhm: 0.1, ...plainAmplifier }],
  },
  curves: [
    curve('c1', 'response', { kind: 'driver', driverId: 'woofer' }),
    curve('c2', 'response', { kind: 'driver', driverId: 'tweeter' }),
    curve('c3', 'impedance', { kind: 'speaker', channel: 'left' }),
  ],
} satisfies Project);
