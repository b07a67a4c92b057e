import {
  deriveDriver,
  discAreaM2,
  driverFigures,
  efficiencyBandwidthHz,
  efficiencyConstantPerM3,
  efficiencyFactor,
  halfSpaceConstantDb,
  movingMassFromAddedMass,
  peakImpedanceOhm,
  semiInductanceOhm,
  sensitivityDb,
  threePointImpedance,
  totalQ,
  vasFromTestBoxM3,
  wavenumberPerM,
} from '../../../src/core/acoustics/index.ts';
import type { Adapter } from '../adapter.ts';
import { angleDeg, asNumber, asNumbers, litresFromM3, m3FromLitres, percentFromRatio, scaled } from '../convert.ts';

const efficiencyConstant: Adapter = {
  family: 'ts-eta-const',
  requires: ['c'],
  run: ({ c }) => ({ k: asNumbers(c).map((speed) => scaled(efficiencyConstantPerM3(speed), -3)) }),
};

const asAir = (pair: unknown) => {
  const [density, speed] = asNumbers(pair);
  return { densityKgPerM3: asNumber(density), soundSpeedMPerS: asNumber(speed) };
};

const levelConstant: Adapter = {
  family: 'ts-spl-const',
  requires: ['rho_c'],
  run: ({ rho_c }) => ({
    k_dB: Array.isArray(rho_c) ? rho_c.map((pair: unknown) => halfSpaceConstantDb(asAir(pair))) : null,
  }),
};

const efficiencyOverMotor: Adapter = {
  family: 'ts-rho2pic',
  requires: ['rho_25C_dry', 'c_25C'],
  run: ({ rho_25C_dry, c_25C }) => ({ value: efficiencyFactor(asAir([rho_25C_dry, c_25C])) }),
};

const peakAndBandwidth: Adapter = {
  family: 'ts-zmax-ebp',
  requires: ['Re', 'Qms', 'Qes', 'fs'],
  run: ({ Re, Qms, Qes, fs }) => ({
    Zmax: peakImpedanceOhm(asNumber(Re), asNumber(Qms), asNumber(Qes)),
    EBP: efficiencyBandwidthHz(asNumber(fs), asNumber(Qes)),
    Qts: totalQ(asNumber(Qms), asNumber(Qes)),
  }),
};

const complete: Adapter = {
  family: 'ts-full',
  requires: ['Re_ohm', 'Bl_Tm', 'Mms_kg', 'Cms_m_per_N', 'Rms_Ns_per_m', 'Sd_m2', 'rho', 'c'],
  run: (inputs) => {
    const parameters = {
      reOhm: asNumber(inputs.Re_ohm),
      leH: 0,
      semiInductance: null,
      blTm: asNumber(inputs.Bl_Tm),
      mmsKg: asNumber(inputs.Mms_kg),
      cmsMPerN: asNumber(inputs.Cms_m_per_N),
      rmsKgPerS: asNumber(inputs.Rms_Ns_per_m),
      sdM2: asNumber(inputs.Sd_m2),
    };
    const figures = driverFigures(parameters, asAir([inputs.rho, inputs.c]));
    return {
      fs_Hz: figures.fsHz,
      Qms: figures.qms,
      Qes: figures.qes,
      Qts: figures.qts,
      Vas_L: litresFromM3(figures.vasM3),
      eta0_percent: percentFromRatio(figures.efficiency),
      SPL_1W_dB: figures.sensitivityDb1W,
      SPL_2V83_dB: figures.sensitivityDb2V83,
      Res_ohm: figures.resOhm,
      Cmes_uF: scaled(figures.cmesF, 6),
      Lces_mH: scaled(figures.lcesH, 3),
      Zmax_ohm: figures.zMaxOhm,
    };
  },
};

/** 1.18 as it stands in a key: 1p18. */
const inKey = (text: string): string => text.replace('.', 'p');

const sheet: Adapter = {
  family: 'ts-sheet',
  requires: ['Re_ohm', 'Bl_Tm', 'Mms_g', 'Cms_mm_per_N', 'eff_diameter_mm', 'Qms', 'rho', 'c', 'k_dB'],
  run: (inputs) => {
    const air = asAir([inputs.rho, inputs.c]);
    const entered = {
      reOhm: asNumber(inputs.Re_ohm),
      blTm: asNumber(inputs.Bl_Tm),
      mmsKg: scaled(asNumber(inputs.Mms_g), -3),
      cmsMPerN: scaled(asNumber(inputs.Cms_mm_per_N), -3),
      sdM2: discAreaM2(scaled(asNumber(inputs.eff_diameter_mm), -3)),
      qms: asNumber(inputs.Qms),
    };
    const driver = deriveDriver(entered, air);
    if (!driver.ok) return null;
    const { derived } = driver.value;
    const constantDb = asNumber(inputs.k_dB);
    const rho = inKey(String(air.densityKgPerM3));
    const c = inKey(String(air.soundSpeedMPerS));
    return {
      fs_Hz: derived.fsHz,
      Qes: derived.qes,
      Qts: derived.qts,
      [`Vas_L_rho${rho}_c${c}`]: litresFromM3(derived.vasM3),
      [`eta0_percent_c${c}`]: percentFromRatio(derived.efficiency),
      [`SPL_dB_k${inKey(constantDb.toFixed(2))}`]: sensitivityDb(derived.efficiency, constantDb),
    };
  },
};

const threePoints: Adapter = {
  family: 'ts-zmeas',
  requires: ['Re_ohm', 'Zmax_ohm', 'f1_Hz', 'f2_Hz'],
  allows: ['level'],
  run: ({ Re_ohm, Zmax_ohm, f1_Hz, f2_Hz }) => {
    const found = threePointImpedance(asNumber(Re_ohm), asNumber(Zmax_ohm), asNumber(f1_Hz), asNumber(f2_Hz));
    return { fs_Hz: found.fsHz, Qms: found.qms, Qes: found.qes, Qts: found.qts, Z12_ohm: found.sideOhm };
  },
};

const addedMass: Adapter = {
  family: 'ts-addmass',
  requires: ['fs_Hz', 'fs_loaded_Hz', 'Ma_kg'],
  run: ({ fs_Hz, fs_loaded_Hz, Ma_kg }) => {
    const found = movingMassFromAddedMass(asNumber(fs_Hz), asNumber(fs_loaded_Hz), asNumber(Ma_kg));
    return { Mms_kg: found.mmsKg, Cms_m_per_N: found.cmsMPerN };
  },
};

const testBox: Adapter = {
  family: 'ts-testbox',
  requires: ['fs_Hz', 'Qes', 'fct_Hz', 'Qect', 'Vt_L'],
  run: ({ fs_Hz, Qes, fct_Hz, Qect, Vt_L }) => {
    const measured = {
      fsHz: asNumber(fs_Hz),
      qes: asNumber(Qes),
      fctHz: asNumber(fct_Hz),
      qect: asNumber(Qect),
    };
    return { Vas_L: litresFromM3(vasFromTestBoxM3(measured, m3FromLitres(asNumber(Vt_L)))) };
  },
};

const lossyCoil: Adapter = {
  family: 'ts-leach-form',
  requires: ['K', 'n', 'f_Hz'],
  run: ({ K, n, f_Hz }) => {
    // ω is the wavenumber at a speed of 1.
    const coils = asNumbers(f_Hz).map((f) => semiInductanceOhm(asNumber(K), asNumber(n), wavenumberPerM(f, 1)));
    const [first] = coils;
    return {
      R_ohm: coils.map((z) => z.re),
      X_ohm: coils.map((z) => z.im),
      phase_deg: first === undefined ? null : angleDeg(first),
    };
  },
};

export const adapters: readonly Adapter[] = [
  efficiencyConstant,
  levelConstant,
  efficiencyOverMotor,
  peakAndBandwidth,
  complete,
  sheet,
  threePoints,
  addedMass,
  testBox,
  lossyCoil,
];
