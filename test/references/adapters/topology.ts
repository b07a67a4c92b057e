import {
  acousticMassKgPerM4,
  addInto,
  chamberComplianceM3PerPa,
  circleAreaM2,
  complexCurve,
  dipoleLengthM,
  dipolePressurePa,
  freeDiscAirMassKg,
  fullSpacePressurePa,
  helmholtzNeckM,
  leakResistancePaSPerM3,
  type ModelChamber,
  type ModelPort,
  magnitudes,
  parseNetlist,
  pistonAirMassKg,
  pointSource,
  type SpeakerModel,
  simulate,
  twoSourceFrequenciesHz,
  twoSourceRatio,
} from '../../../src/core/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';
import { asNumber, asNumbers, dbOfAmplitude, dbSplOfPa, ratio } from '../convert.ts';

const AIR_KEYS = ['rho_kg_m3', 'c_m_s', 'gamma', 'Pr', 'mu_Pa_s'];
const DRIVER_KEYS = ['Re_ohm', 'Bl_Tm', 'Mms_kg', 'Cms_m_N', 'Rms_kg_s', 'Sd_m2'];
const airOf = (inputs: Inputs) => ({
  densityKgPerM3: asNumber(inputs.rho_kg_m3),
  soundSpeedMPerS: asNumber(inputs.c_m_s),
});

interface Room {
  readonly id: string;
  readonly volume: Json | undefined;
  readonly tuning: Json | undefined;
  readonly leakQ: Json | undefined;
}

const ALONE = 1;

/** A chamber with its port, its leak held back in the model ... */
const chamberOf = ({ id, volume, tuning, leakQ }: Room, leakRadiates: boolean): ModelChamber => ({
  id,
  volumeM3: asNumber(volume),
  leak: leakQ === undefined || leakQ === null || leakRadiates ? null : { q: asNumber(leakQ), atHz: asNumber(tuning) },
  absorption: null,
});

/** ... or let out as a massless vent of the leak's resistance. Ports are of unit area: only mass counts. */
const outletsOf = (room: Room, inputs: Inputs): readonly ModelPort[] => {
  const { id, volume, tuning, leakQ } = room;
  if (tuning === undefined) return [];
  const air = airOf(inputs);
  const volumeM3 = asNumber(volume);
  const tuningHz = asNumber(tuning);
  const radiation = pointSource(inputs.r_m === undefined ? ALONE : asNumber(inputs.r_m));
  const vent = { chamberId: id, areaM2: 1, loss: null, radiation };
  const port = {
    ...vent,
    id: `${id} port`,
    effectiveLengthM: helmholtzNeckM({ areaM2: 1, tuningHz, volumeM3 }, air.soundSpeedMPerS),
  };
  if (leakQ === undefined || leakQ === null || inputs.leak_radiates !== true) return [port];
  const leak = { q: asNumber(leakQ), atHz: tuningHz };
  const stuffingPaSPerM3 = leakResistancePaSPerM3(leak, chamberComplianceM3PerPa(volumeM3, air));
  return [port, { ...vent, id: `${id} leak`, effectiveLengthM: 0, stuffingPaSPerM3 }];
};

const bandPassOf = (inputs: Inputs): SpeakerModel => {
  const front: Room = {
    id: 'front',
    volume: inputs.V_front_m3,
    tuning: inputs.f_front_Hz,
    leakQ: inputs.QL_front,
  };
  const rear: Room = { id: 'rear', volume: inputs.V_rear_m3, tuning: inputs.f_rear_Hz, leakQ: inputs.QL_rear };
  const read = parseNetlist('V1 in 0\nLS1 in 0 woofer');
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const leakRadiates = inputs.leak_radiates === true;
  return {
    air: airOf(inputs),
    amplifiers: [{ id: 'V1', voltageV: asNumber(inputs.e_V_rms), resistanceOhm: 0 }],
    parts: read.value,
    speakers: [
      {
        partId: 'LS1',
        parameters: {
          reOhm: asNumber(inputs.Re_ohm),
          leH: 0,
          semiInductance: null,
          blTm: asNumber(inputs.Bl_Tm),
          mmsKg: asNumber(inputs.Mms_kg),
          cmsMPerN: asNumber(inputs.Cms_m_N),
          rmsKgPerS: asNumber(inputs.Rms_kg_s),
          sdM2: asNumber(inputs.Sd_m2),
        },
        chamberId: 'rear',
        frontChamberId: 'front',
        radiation: pointSource(ALONE),
        measured: null,
      },
    ],
    chambers: [chamberOf(front, leakRadiates), chamberOf(rear, leakRadiates)],
    ports: [...outletsOf(front, inputs), ...outletsOf(rear, inputs)],
    passiveRadiators: [],
    radiation: 'half-space',
  };
};

const solved = (inputs: Inputs): Json => {
  const result = simulate(bandPassOf(inputs), Float64Array.from(asNumbers(inputs.f_Hz)));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const simulation = result.value;
  const net = complexCurve(simulation.frequenciesHz.length);
  for (const outlet of simulation.ports) addInto(net, outlet.volumeVelocity);
  return {
    Ud_abs: [...magnitudes(simulation.speakers[0]!.volumeVelocity)],
    Unet_abs: [...magnitudes(net)],
    Z_abs: [...magnitudes(simulation.amplifiers[0]!.impedance)],
    SPL_dB: Array.from(magnitudes(simulation.sum), dbSplOfPa),
  };
};

const bothVented: Adapter = {
  family: 'topology',
  requires: ['f_Hz', 'e_V_rms', 'V_front_m3', 'f_front_Hz', 'V_rear_m3', 'f_rear_Hz', ...DRIVER_KEYS],
  allows: ['QL_front', 'QL_rear', 'r_m', 'leak_radiates', ...AIR_KEYS],
  run: solved,
};

const rearSealed: Adapter = {
  family: 'topology',
  requires: ['f_Hz', 'e_V_rms', 'V_front_m3', 'f_front_Hz', 'V_rear_m3', 'r_m', ...DRIVER_KEYS],
  allows: ['QL_front', 'leak_radiates', ...AIR_KEYS],
  run: solved,
};

const HALF_WAY = 2;

const openBaffle: Adapter = {
  family: 'topology',
  requires: ['baffle_radius_m', 'f_Hz', 'U_rms_m3_s', 'r_m', 'rho_kg_m3', 'c_m_s'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const air = airOf(inputs);
    const radiusM = asNumber(inputs.baffle_radius_m);
    const baffle = { kind: 'round', radiusM } as const;
    const [flow, frequencyHz, distanceM] = [inputs.U_rms_m3_s, inputs.f_Hz, inputs.r_m].map(asNumber) as [
      number,
      number,
      number,
    ];
    const lengthM = dipoleLengthM(baffle, { xM: 0, yM: 0 });
    const pressurePa = dipolePressurePa(flow, frequencyHz, lengthM, { distanceM, offAxisRad: 0 }, air);
    const alonePa = fullSpacePressurePa(flow, frequencyHz, distanceM, air.densityKgPerM3);
    const { equalHz, peakHz } = twoSourceFrequenciesHz(lengthM, air.soundSpeedMPerS);
    return {
      D_eff_m: lengthM,
      D_eff_offset_half_radius_m: dipoleLengthM(baffle, { xM: ratio(radiusM, HALF_WAY), yM: 0 }),
      p_dipole_rms_Pa: pressurePa,
      level_re_full_space_monopole_dB: dbOfAmplitude(ratio(pressurePa, alonePa)),
      level_two_source_dB: dbOfAmplitude(twoSourceRatio(frequencyHz, lengthM, air.soundSpeedMPerS)),
      f_equal_Hz: equalHz,
      f_first_peak_Hz: peakHz,
    };
  },
};

const airLoad: Adapter = {
  family: 'topology',
  requires: ['radius_m', 'rho_kg_m3'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const radiusM = asNumber(inputs.radius_m);
    const density = asNumber(inputs.rho_kg_m3);
    const oneSideKg = pistonAirMassKg(radiusM, density, 1);
    return {
      m_infinite_baffle_both_sides_kg: pistonAirMassKg(radiusM, density, 2),
      m_free_disc_kg: freeDiscAirMassKg(radiusM, density),
      m_one_side_baffle_rear_box_style_kg: oneSideKg,
      MA_one_side_kg_m4: acousticMassKgPerM4(oneSideKg, circleAreaM2(radiusM)),
    };
  },
};

export const adapters: readonly Adapter[] = [bothVented, rearSealed, openBaffle, airLoad];
