import { type AirProperties, boxLosses, helmholtzNeckM, panelMode } from '../../../src/core/acoustics/index.ts';
import { pointSource, type SpeakerModel, simulate } from '../../../src/core/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';
import { asNumber, asNumbers } from '../convert.ts';

const AIR_KEYS = ['rho_kg_m3', 'c_m_s'];
/** Stated with every case of the family; these quantities do not depend on them. */
const UNUSED_AIR_KEYS = ['gamma', 'Pr', 'mu_Pa_s'];
const BOX_KEYS = ['V_m3', 'fB_Hz', 'QL', 'QA', 'QP'];

const airOf = (inputs: Inputs): AirProperties => ({
  densityKgPerM3: asNumber(inputs.rho_kg_m3),
  soundSpeedMPerS: asNumber(inputs.c_m_s),
});

const qOf = (q: Json | undefined): number | null => (q === undefined || q === null ? null : asNumber(q));
const lossOf = (q: Json | undefined, tuningHz: number) => {
  const value = qOf(q);
  return value === null ? null : { q: value, atHz: tuningHz };
};

const resistances: Adapter = {
  family: 'losses',
  requires: [...BOX_KEYS, ...AIR_KEYS],
  allows: UNUSED_AIR_KEYS,
  run: (inputs) => {
    const found = boxLosses(
      {
        volumeM3: asNumber(inputs.V_m3),
        tuningHz: asNumber(inputs.fB_Hz),
        ql: qOf(inputs.QL),
        qa: qOf(inputs.QA),
        qp: qOf(inputs.QP),
      },
      airOf(inputs),
    );
    return {
      C_ab: found.complianceM3PerPa,
      M_ap: found.portMassKgPerM4,
      R_leak: found.leakPaSPerM3,
      R_abs_series: found.absorptionPaSPerM3,
      R_port_series: found.portPaSPerM3,
      Q_total: found.totalQ,
    };
  },
};

function ventedModel(inputs: Inputs): SpeakerModel {
  const air = airOf(inputs);
  const [volumeM3, tuningHz, sdM2] = [asNumber(inputs.V_m3), asNumber(inputs.fB_Hz), asNumber(inputs.Sd_m2)];
  return {
    air,
    amplifiers: [{ id: 'V1', voltageV: 1, resistanceOhm: 0 }],
    parts: [
      { id: 'V1', kind: 'amplifier', nodes: ['in', '0'], note: '' },
      { id: 'LS1', kind: 'speaker', nodes: ['in', '0'], driverId: 'woofer', note: '' },
    ],
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
          sdM2,
        },
        chamberId: 'box',
        radiation: pointSource(1),
        measured: null,
      },
    ],
    chambers: [{ id: 'box', volumeM3, leak: lossOf(inputs.QL, tuningHz), absorption: lossOf(inputs.QA, tuningHz) }],
    ports: [
      {
        id: 'port',
        chamberId: 'box',
        // Any area does, with the length that tunes the box with it; the cone's own is at hand.
        areaM2: sdM2,
        effectiveLengthM: helmholtzNeckM({ areaM2: sdM2, tuningHz, volumeM3 }, air.soundSpeedMPerS),
        loss: lossOf(inputs.QP, tuningHz),
        radiation: pointSource(1),
      },
    ],
    passiveRadiators: [],
    radiation: 'half-space',
  };
}

const impedance: Adapter = {
  family: 'losses',
  requires: ['f_Hz', ...BOX_KEYS, 'Re_ohm', 'Bl_Tm', 'Mms_kg', 'Cms_m_N', 'Rms_kg_s', 'Sd_m2', ...AIR_KEYS],
  allows: UNUSED_AIR_KEYS,
  run: (inputs) => {
    const result = simulate(ventedModel(inputs), Float64Array.from(asNumbers(inputs.f_Hz)));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const { re, im } = result.value.amplifiers[0]!.impedance;
    return { Z_re: [...re], Z_im: [...im] };
  },
};

const panel: Adapter = {
  family: 'losses',
  requires: ['E_Pa', 'poisson', 'thickness_m', 'panel_density_kg_m3', 'a_m', 'b_m'],
  allows: [...AIR_KEYS, ...UNUSED_AIR_KEYS],
  run: (inputs) => {
    const mode = panelMode({
      widthM: asNumber(inputs.a_m),
      heightM: asNumber(inputs.b_m),
      thicknessM: asNumber(inputs.thickness_m),
      youngPa: asNumber(inputs.E_Pa),
      poisson: asNumber(inputs.poisson),
      densityKgPerM3: asNumber(inputs.panel_density_kg_m3),
    });
    return {
      f11_Hz: mode.resonanceHz,
      C_acoustic_first_mode_m3_Pa: mode.complianceM3PerPa,
      M_acoustic_first_mode_kg_m4: mode.massKgPerM4,
      C_acoustic_static_all_modes: mode.staticComplianceM3PerPa,
    };
  },
};

export const adapters: readonly Adapter[] = [resistances, impedance, panel];
