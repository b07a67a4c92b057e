import {
  discAreaM2,
  FLANGED_END_RADII,
  FREE_END_RADII,
  HANDBOOK_END_RADII,
  handbookCentimetreConstant,
  handbookInchConstant,
  helmholtzHz,
  leastPortAreaM2,
  leastPortDiameterM,
  machNumber,
  neckLengthM,
  PISTON_END_RADII,
  portToConeFlow,
  rectangularEndFactors,
  roundPortLength,
} from '../../../src/core/acoustics/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, m3FromLitres, magnitude, scaled } from '../convert.ts';

const freeEnd: Adapter = {
  family: 'port-ec-unflanged',
  requires: [],
  run: () => ({ delta_over_r: FREE_END_RADII }),
};

const flangedEnd: Adapter = {
  family: 'port-ec-flanged',
  requires: [],
  run: () => ({ delta_over_r_pipe: FLANGED_END_RADII, delta_over_r_uniform_piston: PISTON_END_RADII }),
};

const rectangle: Adapter = {
  family: 'port-ec-rect',
  requires: ['a', 'b'],
  run: ({ a, b }) => {
    const { overShortSide, overEquivalentRadius } = rectangularEndFactors(asNumber(a), asNumber(b));
    return { delta_over_short_side: overShortSide, delta_over_r_eq: overEquivalentRadius };
  },
};

const length: Adapter = {
  family: 'port-len',
  requires: ['Vb_L', 'fB_Hz', 'd_cm', 'n_vents', 'k_per_diameter', 'c'],
  run: ({ Vb_L, fB_Hz, d_cm, n_vents, k_per_diameter, c }) => {
    const port = {
      volumeM3: m3FromLitres(asNumber(Vb_L)),
      tuningHz: asNumber(fB_Hz),
      diameterM: scaled(asNumber(d_cm), -2),
      count: asNumber(n_vents),
      endDiameters: asNumber(k_per_diameter),
    };
    const { lengthM, effectiveLengthM } = roundPortLength(port, asNumber(c));
    return { L_cm: scaled(lengthM, 2), Leff_cm: scaled(effectiveLengthM, 2) };
  },
};

const handbook: Adapter = {
  family: 'port-handbook-const',
  requires: [],
  run: () => ({
    inch_const_c344p4: handbookInchConstant(),
    metric_const_c344p13: handbookCentimetreConstant(),
    sum_ec_r: HANDBOOK_END_RADII,
  }),
};

const leastSize: Adapter = {
  family: 'port-min-area',
  requires: ['fB_Hz', 'VD_m3'],
  run: ({ fB_Hz, VD_m3 }) => ({
    SV_min_m2: leastPortAreaM2(asNumber(fB_Hz), asNumber(VD_m3)),
    dV_min_m: leastPortDiameterM(asNumber(fB_Hz), asNumber(VD_m3)),
  }),
};

const flowAtTuning: Adapter = {
  family: 'port-ud-uv',
  requires: ['QL'],
  run: ({ QL }) => ({ UV_over_UD: asNumbers(QL).map((ql) => magnitude(portToConeFlow(1, ql))) }),
};

const mach: Adapter = {
  family: 'port-mach',
  requires: ['v_peak_m_s', 'c'],
  run: ({ v_peak_m_s, c }) => ({ mach: machNumber(asNumber(v_peak_m_s), asNumber(c)) }),
};

const bottle: Adapter = {
  family: 'helm',
  requires: ['S_m2', 'V_m3', 'L_m', 'c', 'delta_in_r', 'delta_out_r'],
  run: ({ S_m2, V_m3, L_m, c, delta_in_r, delta_out_r }) => {
    const areaM2 = asNumber(S_m2);
    const volumeM3 = asNumber(V_m3);
    const lengthM = asNumber(L_m);
    const effectiveLengthM = neckLengthM(areaM2, lengthM, [asNumber(delta_in_r), asNumber(delta_out_r)]);
    return {
      Leff_m: effectiveLengthM,
      f_Hz: helmholtzHz({ areaM2, effectiveLengthM, volumeM3 }, asNumber(c)),
      f_no_end_correction_Hz: helmholtzHz({ areaM2, effectiveLengthM: lengthM, volumeM3 }, asNumber(c)),
    };
  },
};

const bareBottle: Adapter = {
  family: 'helm-exam',
  requires: ['V_m3', 'd_m', 'L_m', 'c'],
  run: ({ V_m3, d_m, L_m, c }) => {
    const areaM2 = discAreaM2(asNumber(d_m));
    const resonator = { areaM2, effectiveLengthM: asNumber(L_m), volumeM3: asNumber(V_m3) };
    return { S_m2: areaM2, f_no_end_correction_Hz: helmholtzHz(resonator, asNumber(c)) };
  },
};

export const adapters: readonly Adapter[] = [
  freeEnd,
  flangedEnd,
  rectangle,
  length,
  handbook,
  leastSize,
  flowAtTuning,
  mach,
  bottle,
  bareBottle,
];
