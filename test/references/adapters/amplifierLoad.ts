import {
  capacitor,
  currentReserve,
  dissipationFactor,
  inductor,
  loadAdmittance,
  resistor,
  source,
} from '../../../src/core/circuit/index.ts';
import { leastAllowedOhm } from '../../../src/core/units/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, radFromDeg } from '../convert.ts';

const dissipation: Adapter = {
  family: 'amp',
  requires: ['angle_deg'],
  run: ({ angle_deg }) => ({
    R_eq_over_Zabs: asNumbers(angle_deg).map((deg) => dissipationFactor(radFromDeg(deg))),
  }),
};

const seriesBranch: Adapter = {
  family: 'amp',
  requires: ['R_ohm', 'L_H', 'C_F', 'V_peak'],
  run: ({ R_ohm, L_H, C_F, V_peak }) => {
    const load = loadAdmittance(
      [
        source('V1', ['in', '0'], 1, 0),
        resistor('R1', ['in', 'a'], asNumber(R_ohm)),
        inductor('L1', ['a', 'b'], { henry: asNumber(L_H), dcrOhm: 0, coreLossTangent: 0 }),
        capacitor('C1', ['b', '0'], { farad: asNumber(C_F), esrOhm: 0 }),
      ],
      'V1',
    );
    if (!load.ok) throw new Error(JSON.stringify(load.problems));
    const reserve = currentReserve(load.value, {
      peakV: asNumber(V_peak),
      sineBandHz: [1, 1e6],
      programmeHz: null,
    });
    return {
      I_worst_A: reserve?.worstA ?? null,
      I_sine_worst_A: reserve?.sineA ?? null,
      ratio: reserve?.ratio ?? null,
    };
  },
};

const ratedImpedance: Adapter = {
  family: 'amp',
  requires: ['Z_rated_ohm'],
  run: ({ Z_rated_ohm }) => ({ Z_min_allowed_ohm: asNumbers(Z_rated_ohm).map(leastAllowedOhm) }),
};

export const adapters: readonly Adapter[] = [dissipation, seriesBranch, ratedImpedance];
