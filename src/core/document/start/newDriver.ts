import { plainDriver } from '../plain.ts';
import type { Driver } from '../schema.ts';

type Sheet = Omit<Driver, 'id' | 'role' | 'sheetAir' | 'measured' | 'description' | 'fitting' | 'heat'>;

// Invented drivers of ordinary size and strength; no maker's data.
const sheets: Readonly<Record<Driver['role'], Sheet>> = {
  woofer: {
    name: '170 mm woofer (invented)',
    shape: 'cone',
    entered: {
      nominalOhm: 8,
      reOhm: 5.8,
      leH: 0.7e-3,
      fsHz: 38,
      qms: 4.2,
      qes: 0.42,
      vasM3: 0.026,
      sdM2: 0.0137,
      xmaxM: 0.005,
      ratedPowerW: 60,
    },
    outerDiameterM: 0.17,
    depthM: 0.08,
    displacementM3: 0.8e-3,
  },
  mid: {
    name: '110 mm mid (invented)',
    shape: 'cone',
    entered: {
      nominalOhm: 8,
      reOhm: 5.9,
      leH: 0.25e-3,
      fsHz: 85,
      qms: 3.4,
      qes: 0.45,
      vasM3: 0.0034,
      sdM2: 0.0055,
      xmaxM: 0.003,
      ratedPowerW: 40,
    },
    outerDiameterM: 0.11,
    depthM: 0.055,
    displacementM3: 0.25e-3,
  },
  tweeter: {
    name: '28 mm dome tweeter (invented)',
    shape: 'dome',
    entered: {
      nominalOhm: 6,
      reOhm: 4.8,
      leH: 0.04e-3,
      fsHz: 900,
      qms: 2.2,
      qes: 0.9,
      vasM3: 12e-6,
      sdM2: 0.00075,
      xmaxM: 0.0005,
      ratedPowerW: 20,
    },
    outerDiameterM: 0.1,
    depthM: 0.03,
    displacementM3: 0.05e-3,
  },
  'full-range': {
    name: '120 mm full-range (invented)',
    shape: 'cone',
    entered: {
      nominalOhm: 8,
      reOhm: 6.4,
      leH: 0.15e-3,
      fsHz: 62,
      qms: 3.5,
      qes: 0.55,
      vasM3: 0.0075,
      sdM2: 0.0062,
      xmaxM: 0.0035,
      ratedPowerW: 30,
    },
    outerDiameterM: 0.12,
    depthM: 0.06,
    displacementM3: 0.3e-3,
  },
};

/**
 * A driver to start from: complete and free of contradictions, its numbers invented and its name and description saying so.
 * @example newDriver('tweeter', 'driver-3')
 */
export const newDriver = (role: Driver['role'], id: string): Driver => ({
  id,
  role,
  description: "Invented starting values: enter your own driver's.",
  sheetAir: null,
  measured: null,
  ...plainDriver,
  ...sheets[role],
});
