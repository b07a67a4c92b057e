import {
  axialPressureRatio,
  farAxialPressureRatio,
  HALF_POWER_DB,
  HALF_PRESSURE_DB,
  kaOf,
  lastAxialMaximumM,
  lineDirectivity,
  nearFieldCentreRatio,
  nearFieldDistanceRatio,
  nearFieldLimitHz,
  nearToFarRatio,
  PISTON_END_RADII,
  pistonAirMassKg,
  pistonBeamAngleRad,
  pistonBeamArgument,
  pistonDirectivityAt,
  pistonDirectivityFactor,
  pistonFirstNullRad,
  pistonFirstSideLobe,
  pistonImpedance,
  portNearFieldFactor,
  rayleighDistanceM,
  wavelengthM,
  wavenumberPerM,
} from '../../../src/core/acoustics/index.ts';
import { besselJ1, besselJ1Zero, struveH0, struveH1 } from '../../../src/core/math/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, dbOfAmplitude, dbOfPower, degFromRad, radFromDeg, scaled } from '../convert.ts';

const FIRST_ZEROS = [1, 2, 3];
const degOrNone = (rad: number | null): number | null => (rad === null ? null : degFromRad(rad));

const struve: Adapter = {
  family: 'struve',
  requires: ['x'],
  run: ({ x }) => ({ H1: asNumbers(x).map(struveH1) }),
};

const struveBoth: Adapter = {
  family: 'struve',
  requires: ['H1_x', 'H0_x'],
  run: ({ H1_x, H0_x }) => ({ H1: asNumbers(H1_x).map(struveH1), H0: asNumbers(H0_x).map(struveH0) }),
};

const bessel: Adapter = {
  family: 'bessel-j1',
  requires: ['x'],
  run: ({ x }) => ({ J1: asNumbers(x).map(besselJ1), zeros: FIRST_ZEROS.map(besselJ1Zero) }),
};

const impedance: Adapter = {
  family: 'piston-z',
  requires: ['ka'],
  run: ({ ka }) => {
    const all = asNumbers(ka).map(pistonImpedance);
    return { R1: all.map((z) => z.re), X1: all.map((z) => z.im) };
  },
};

const airMass: Adapter = {
  family: 'piston-airmass',
  requires: ['a_m', 'rho'],
  run: ({ a_m, rho }) => ({
    M_one_side_baffled_kg: pistonAirMassKg(asNumber(a_m), asNumber(rho), 1),
    M_two_sides_kg: pistonAirMassKg(asNumber(a_m), asNumber(rho), 2),
    delta_over_a: PISTON_END_RADII,
  }),
};

const beamArguments: Adapter = {
  family: 'piston-dir-args',
  requires: ['level_dB'],
  run: ({ level_dB }) => ({
    x: asNumbers(level_dB).map(pistonBeamArgument),
    zeros: FIRST_ZEROS.map(besselJ1Zero),
    first_sidelobe_dB: dbOfAmplitude(pistonFirstSideLobe()),
  }),
};

const beam: Adapter = {
  family: 'piston-dir',
  requires: ['a_m', 'f_Hz', 'c', 'theta_deg'],
  run: ({ a_m, f_Hz, c, theta_deg }) => {
    const ka = kaOf(asNumber(a_m), asNumber(f_Hz), asNumber(c));
    return {
      ka,
      level_dB: asNumbers(theta_deg).map((deg) => dbOfAmplitude(pistonDirectivityAt(ka, radFromDeg(deg)))),
      minus3_deg: degOrNone(pistonBeamAngleRad(HALF_POWER_DB, ka)),
      minus6_deg: degOrNone(pistonBeamAngleRad(HALF_PRESSURE_DB, ka)),
      DI_halfspace_baffle_dB: dbOfPower(pistonDirectivityFactor(ka)),
      first_null_deg: degOrNone(pistonFirstNullRad(ka)),
    };
  },
};

const directivityIndex: Adapter = {
  family: 'piston-di',
  requires: ['ka'],
  run: ({ ka }) => ({ DI_dB: asNumbers(ka).map((x) => dbOfPower(pistonDirectivityFactor(x))) }),
};

const line: Adapter = {
  family: 'line-dir',
  requires: ['length_m', 'f_Hz', 'c', 'theta_deg'],
  run: ({ length_m, f_Hz, c, theta_deg }) => {
    const k = wavenumberPerM(asNumber(f_Hz), asNumber(c));
    const levelDb = (deg: number) => dbOfAmplitude(lineDirectivity(asNumber(length_m), k, radFromDeg(deg)));
    return { level_dB: asNumbers(theta_deg).map(levelDb) };
  },
};

const nearToFar: Adapter = {
  family: 'near',
  requires: ['a_m', 'r_m'],
  run: ({ a_m, r_m }) => {
    const half = nearToFarRatio(asNumber(a_m), asNumber(r_m), 'half');
    const full = nearToFarRatio(asNumber(a_m), asNumber(r_m), 'full');
    return { pN_over_pF: half, dB: dbOfAmplitude(half), dB_full_space: dbOfAmplitude(full) };
  },
};

const nearDistance: Adapter = {
  family: 'near-dist',
  requires: ['r_over_a'],
  run: ({ r_over_a }) => ({ error_dB: asNumbers(r_over_a).map((r) => dbOfAmplitude(nearFieldDistanceRatio(r))) }),
};

const nearLimit: Adapter = {
  family: 'near-fmax',
  requires: ['diameter_cm', 'c'],
  run: ({ diameter_cm, c }) => ({
    fmax_Hz: nearFieldLimitHz(scaled(asNumber(diameter_cm), -2), asNumber(c)),
    nearfield_error_dB_at_ka1: dbOfAmplitude(nearFieldCentreRatio(1)),
    // For a diameter of 1 cm.
    fmax_times_D_cm: nearFieldLimitHz(scaled(1, -2), asNumber(c)),
  }),
};

const nearAxis: Adapter = {
  family: 'near-axis',
  requires: ['a_m', 'r_m', 'f_Hz', 'c'],
  run: ({ a_m, r_m, f_Hz, c }) => {
    const [a, r] = [asNumber(a_m), asNumber(r_m)];
    const k = wavenumberPerM(asNumber(f_Hz), asNumber(c));
    const wavelength = wavelengthM(asNumber(f_Hz), asNumber(c));
    return {
      p_over_rho_c_u: axialPressureRatio(a, r, k),
      far_approx: farAxialPressureRatio(a, r, k),
      last_max_m: lastAxialMaximumM(a, wavelength),
      rayleigh_distance_m: rayleighDistanceM(a, wavelength),
    };
  },
};

const nearPort: Adapter = {
  family: 'near-port',
  requires: ['SD_m2', 'SV_m2'],
  run: ({ SD_m2, SV_m2 }) => ({
    vent_level_shift_dB: dbOfAmplitude(portNearFieldFactor(asNumber(SV_m2), asNumber(SD_m2))),
  }),
};

export const adapters: readonly Adapter[] = [
  struve,
  struveBoth,
  bessel,
  impedance,
  airMass,
  beamArguments,
  beam,
  directivityIndex,
  line,
  nearToFar,
  nearDistance,
  nearLimit,
  nearAxis,
  nearPort,
];
