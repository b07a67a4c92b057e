import { RETURN } from '../../circuit/branch.ts';
import {
  defaultAbsorption,
  defaultAir,
  defaultAmplifier,
  defaultDriveV,
  defaultLeak,
  defaultListening,
} from '../defaults.ts';
import { plainChamber, plainEnclosure, plainMount } from '../plain.ts';
import type { Project } from '../schema.ts';
import { startingCentreZM } from './mountFor.ts';
import { newDriver } from './newDriver.ts';

const PANEL_M = 0.018;
const HEIGHT_M = 0.32;

/** The smallest complete project: one invented full-range driver on one amplifier in a sealed cabinet of about 8 litres. */
export function newProject(): Project {
  const driver = newDriver('full-range', 'driver-1');
  return {
    format: 'conewright-project',
    version: 2,
    name: 'New loudspeaker',
    notes: '',
    air: defaultAir,
    drivers: [driver],
    enclosure: {
      widthM: 0.2,
      heightM: HEIGHT_M,
      depthM: 0.22,
      panelM: PANEL_M,
      chambers: [
        {
          id: 'chamber-1',
          name: 'Chamber 1',
          volume: { kind: 'geometry', bottomM: PANEL_M, topM: HEIGHT_M - PANEL_M, depthM: null },
          bracesM3: 0,
          fillGain: 1,
          leak: defaultLeak,
          absorption: defaultAbsorption,
          ...plainChamber,
        },
      ],
      ports: [],
      ...plainEnclosure,
      mounts: [
        {
          partId: 'LS1',
          chamberId: 'chamber-1',
          ...plainMount,
          xM: 0,
          // Low enough for a tweeter above it.
          yM: 0.14,
          acousticCentreZM: startingCentreZM(driver),
        },
      ],
    },
    network: {
      parts: [
        { kind: 'amplifier', id: 'V1', nodes: ['in', RETURN], note: '' },
        { kind: 'speaker', id: 'LS1', nodes: ['in', RETURN], driverId: driver.id, note: '' },
      ],
    },
    chain: { driveV: defaultDriveV, amplifiers: [{ id: 'V1', ...defaultAmplifier }] },
    listening: defaultListening,
    curves: [],
    snapshots: [],
    opensWith: 'workbench',
  };
}
