import { delayPhaseRad, propagationDelayS } from '../../../src/core/measured/propagationDelay.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, degFromRad, scaled } from '../convert.ts';

const acousticCentre: Adapter = {
  family: 'delay',
  requires: ['offset_m', 'f_Hz', 'c'],
  run: ({ offset_m, f_Hz, c }) => {
    const delayS = propagationDelayS(asNumber(offset_m), asNumber(c));
    return { delay_us: scaled(delayS, 6), phase_deg: degFromRad(delayPhaseRad(asNumber(f_Hz), delayS)) };
  },
};

export const adapters: readonly Adapter[] = [acousticCentre];
