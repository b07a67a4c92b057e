import {
  type ModelSpeaker,
  magnitudes,
  parseNetlist,
  pointSource,
  type SpeakerModel,
  simulate,
} from '../../../src/core/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';
import { angleDeg, asNumber, asNumbers, asText, dbSplOfPa, scaled } from '../convert.ts';

type Fields = { readonly [key: string]: Json };
const fields = (x: Json | undefined): Fields => {
  if (typeof x !== 'object' || x === null || Array.isArray(x))
    throw new TypeError(`expected fields: ${JSON.stringify(x)}`);
  return x as Fields;
};
const list = (x: Json | undefined): readonly Json[] => (Array.isArray(x) ? x : []);
const numberOr = <T>(x: Json | undefined, otherwise: T): number | T =>
  x === undefined || x === null ? otherwise : asNumber(x);

const parameters = (driver: Fields): ModelSpeaker['parameters'] => ({
  reOhm: asNumber(driver.Re_ohm),
  leH: numberOr(driver.Le_H, 0),
  semiInductance:
    driver.semiInductance === undefined
      ? null
      : {
          kOhmSn: asNumber(fields(driver.semiInductance).K),
          exponent: asNumber(fields(driver.semiInductance).n),
        },
  blTm: asNumber(driver.Bl_Tm),
  mmsKg: asNumber(driver.Mms_kg),
  cmsMPerN: asNumber(driver.Cms_m_per_N),
  rmsKgPerS: asNumber(driver.Rms_kg_per_s),
  sdM2: asNumber(driver.Sd_m2),
});

const loss = (q: Json | undefined, at: Json | undefined) =>
  q === undefined || q === null ? null : { q: asNumber(q), atHz: asNumber(at) };

function modelOf(inputs: Inputs): SpeakerModel {
  const source = fields(inputs.source);
  const chambers = fields(inputs.chambers);
  const mounts = fields(inputs.mounts);
  const distances = fields(inputs.distances_m);
  const drivers = fields(inputs.drivers);
  // A case writes a driver as `D1 plus minus name`; the project's own letter for it is LS.
  const lines = list(inputs.netlist).map((line) => asText(line).replace(/^D/, 'LS'));
  const read = parseNetlist(['V1 in 0', ...lines].join('\n'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const parts = read.value;
  return {
    air: {
      densityKgPerM3: asNumber(fields(inputs.air).rho_kg_per_m3),
      soundSpeedMPerS: asNumber(fields(inputs.air).c_m_per_s),
    },
    amplifiers: [
      { id: 'V1', voltageV: asNumber(source.voltage_V), resistanceOhm: asNumber(source.outputResistance_ohm) },
    ],
    parts,
    speakers: parts.flatMap((part) => {
      if (part.kind !== 'speaker') return [];
      const name = part.id.replace(/^LS/, 'D');
      const mount = asText(mounts[name]);
      return [
        {
          partId: part.id,
          parameters: parameters(fields(drivers[part.driverId])),
          chamberId: mount in chambers ? mount : null,
          radiation: pointSource(asNumber(distances[name])),
          measured: null,
        },
      ];
    }),
    chambers: Object.entries(chambers).map(([id, chamber]) => {
      const { Vb_m3, fB_Hz, QL, QA } = fields(chamber);
      return { id, volumeM3: asNumber(Vb_m3), leak: loss(QL, fB_Hz), absorption: loss(QA, fB_Hz) };
    }),
    ports: list(inputs.ports).map((port, index) => {
      const { chamber, area_m2, effectiveLength_m, distance_m } = fields(port);
      const { QP, fB_Hz } = fields(chambers[asText(chamber)]);
      return {
        id: `P${index}`,
        chamberId: asText(chamber),
        areaM2: asNumber(area_m2),
        effectiveLengthM: asNumber(effectiveLength_m),
        loss: loss(QP, fB_Hz),
        radiation: pointSource(asNumber(distance_m)),
      };
    }),
    passiveRadiators: list(inputs.passiveRadiators).map((radiator, index) => {
      const { chamber, Sd_m2, Mms_kg, Cms_m_per_N, Rms_kg_per_s, distance_m } = fields(radiator);
      return {
        id: `PR${index}`,
        chamberId: asText(chamber),
        sdM2: asNumber(Sd_m2),
        mmsKg: asNumber(Mms_kg),
        cmsMPerN: asNumber(Cms_m_per_N),
        rmsKgPerS: asNumber(Rms_kg_per_s),
        radiation: pointSource(asNumber(distance_m)),
      };
    }),
    radiation: 'half-space',
  };
}

const angles = (curve: { re: Float64Array; im: Float64Array }): number[] =>
  Array.from(curve.re, (re, i) => angleDeg({ re, im: curve.im[i]! }));

/** Whole loudspeakers from physical parts: the project's main job. */
export const adapter: Adapter = {
  family: 'speaker',
  requires: ['air', 'source', 'netlist', 'drivers', 'chambers', 'mounts', 'distances_m', 'f_Hz'],
  allows: ['ports', 'passiveRadiators'],
  run(inputs) {
    const result = simulate(modelOf(inputs), Float64Array.from(asNumbers(inputs.f_Hz)));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    const simulation = result.value;
    const { impedance } = simulation.amplifiers[0]!;
    return {
      Zin_mag_ohm: [...magnitudes(impedance)],
      Zin_phase_deg: angles(impedance),
      level_dB_SPL: Array.from(magnitudes(simulation.sum), dbSplOfPa),
      phase_deg: angles(simulation.sum),
      drivers: Object.fromEntries(
        simulation.speakers.map((speaker) => [
          speaker.partId.replace(/^LS/, 'D'),
          {
            excursion_peak_mm: Array.from(speaker.excursionPeakM, (x) => scaled(x, 3)),
            terminal_voltage_V: [...magnitudes(speaker.terminalVoltage)],
          },
        ]),
      ),
      port_air_velocity_rms_m_per_s: simulation.ports.map((port) => [...port.airSpeedRmsMPerS]),
    };
  },
};
