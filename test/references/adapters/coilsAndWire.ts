import {
  brooksFor,
  brooksInductanceH,
  brooksSection,
  type Circle,
  circleMutualH,
  coredCoilFigures,
  couplingFactor,
  currentSheetH,
  dipoleMutualH,
  estimateError,
  inductanceFactor,
  layTurns,
  outerDiametersM,
  proximityOhm,
  ringMutualH,
  sectionInductanceH,
  sectionOhm,
  squaredFieldSum,
  turnsOhm,
  type Vector,
  wheelerMultilayerH,
  wheelerSolenoidH,
  wireLengthM,
} from '../../../src/core/build/index.ts';
import { COPPER, type Conductor, dielectricOhm, gaugeDiameterM, wireFigures } from '../../../src/core/circuit/index.ts';
import { requireUnit, toInside } from '../../../src/core/units/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import { asNumber, asNumbers, asText, percentFromRatio, ratio, scaled } from '../convert.ts';

/** One answer for a number, a list of them for a list. */
const each = (x: Json | undefined, answer: (value: number) => Json): Json =>
  Array.isArray(x) ? asNumbers(x).map(answer) : answer(asNumber(x));

const metresFromInches = (x: Json | undefined): number => toInside(String(asNumber(x)), requireUnit('in', 'length'));
const metresFromMm = (x: Json | undefined): number => scaled(asNumber(x), -3);
/** Copper with the resistivity that a case states, in ohm·mm²/m. */
const copperOf = (ohmMm2PerM: Json | undefined): Conductor => ({
  ...COPPER,
  resistivityOhmM: scaled(asNumber(ohmMm2PerM), -6),
});

const gauges: Adapter = {
  family: 'wire-awg',
  requires: ['AWG'],
  run: ({ AWG }) => ({
    d_mm: each(AWG, (gauge) => scaled(gaugeDiameterM(gauge), 3)),
    ohm_per_km: each(AWG, (gauge) => scaled(wireFigures(gaugeDiameterM(gauge), COPPER, 20).ohmPerM, 3)),
  }),
};

const metricWire: Adapter = {
  family: 'wire-mm',
  requires: ['d_mm'],
  run: ({ d_mm }) => ({
    ohm_per_m: each(d_mm, (mm) => wireFigures(metresFromMm(mm), COPPER, 20).ohmPerM),
    ohm_per_m_at_60C: each(d_mm, (mm) => wireFigures(metresFromMm(mm), COPPER, 60).ohmPerM),
  }),
};

const singleLayer: Adapter = {
  family: 'ind-single',
  requires: ['radius_in', 'length_in', 'turns'],
  run: ({ radius_in, length_in, turns }) => {
    const coil = {
      radiusM: metresFromInches(radius_in),
      lengthM: metresFromInches(length_in),
      turns: asNumber(turns),
    };
    const [wheelerH, sheetH] = [wheelerSolenoidH(coil), currentSheetH(coil)];
    return {
      L_wheeler_uH: scaled(wheelerH, 6),
      L_current_sheet_uH: scaled(sheetH, 6),
      wheeler_error_percent: percentFromRatio(estimateError(wheelerH, sheetH)),
    };
  },
};

/** Wires that a case may ask about by the name of its output. */
const WIRES_MM = ['0.5', '0.6', '0.7', '0.8', '0.9', '1.0', '1.2', '1.25', '1.4', '1.5', '1.6', '1.8', '2.0'] as const;

const multilayer: Adapter = {
  family: 'ind-multi',
  requires: ['mean_radius_m', 'length_m', 'depth_m', 'turns', 'resistivity_ohm_mm2_per_m'],
  run: ({ mean_radius_m, length_m, depth_m, turns, resistivity_ohm_mm2_per_m }) => {
    const section = {
      meanRadiusM: asNumber(mean_radius_m),
      lengthM: asNumber(length_m),
      depthM: asNumber(depth_m),
      turns: asNumber(turns),
    };
    const { resistivityOhmM } = copperOf(resistivity_ohm_mm2_per_m);
    const [wheelerH, exactH] = [wheelerMultilayerH(section), sectionInductanceH(section)];
    return {
      L_wheeler_mH: scaled(wheelerH, 3),
      L_exact_mH: scaled(exactH, 3),
      wheeler_error_percent: percentFromRatio(estimateError(wheelerH, exactH)),
      wire_length_m: wireLengthM(section),
      ...Object.fromEntries(
        WIRES_MM.map((mm) => [
          `R_ohm_with_${mm.replace('.', 'p')}_mm_wire`,
          sectionOhm(section, metresFromMm(Number(mm)), resistivityOhmM),
        ]),
      ),
    };
  },
};

const brooks: Adapter = {
  family: 'ind-brooks',
  requires: ['c_m', 'N'],
  run: ({ c_m, N }) => {
    const section = brooksSection(asNumber(c_m), asNumber(N));
    const exactH = sectionInductanceH(section);
    return {
      L_over_mu0_c: inductanceFactor(exactH, section),
      L_over_a_uH_per_m: scaled(ratio(exactH, section.meanRadiusM), 6),
      wheeler_over_exact: ratio(wheelerMultilayerH(section), exactH),
    };
  },
};

const brooksDesign: Adapter = {
  family: 'ind-brooks-design',
  requires: ['L_H', 'wire_outer_d_mm', 'bare_d_mm', 'packing', 'resistivity_ohm_mm2_per_m'],
  run: ({ L_H, wire_outer_d_mm, bare_d_mm, packing, resistivity_ohm_mm2_per_m }) => {
    if (!asText(packing).startsWith('square')) throw new Error(`no packing “${asText(packing)}”`);
    const section = brooksFor(asNumber(L_H), metresFromMm(wire_outer_d_mm));
    return {
      N: section.turns,
      c_mm: scaled(section.lengthM, 3),
      wire_length_m: wireLengthM(section),
      R_ohm: sectionOhm(section, metresFromMm(bare_d_mm), copperOf(resistivity_ohm_mm2_per_m).resistivityOhmM),
    };
  },
};

const coredCoil: Adapter = {
  family: 'parts',
  requires: ['turns', 'area_m2', 'core_length_m', 'gap_m', 'mu_r', 'I_peak_A', 'f_Hz', 'k_W_m3', 'alpha', 'beta'],
  run: (inputs) => {
    const figures = coredCoilFigures(
      {
        turns: asNumber(inputs.turns),
        areaM2: asNumber(inputs.area_m2),
        coreLengthM: asNumber(inputs.core_length_m),
        gapM: asNumber(inputs.gap_m),
        relativePermeability: asNumber(inputs.mu_r),
      },
      {
        kWPerM3: asNumber(inputs.k_W_m3),
        frequencyPower: asNumber(inputs.alpha),
        fluxPower: asNumber(inputs.beta),
      },
      asNumber(inputs.I_peak_A),
      asNumber(inputs.f_Hz),
    );
    return {
      L_H: figures.henry,
      B_peak_T: figures.peakFluxT,
      P_core_W: figures.lossW,
      R_series_equiv_ohm: figures.seriesOhm,
      R_parallel_equiv_ohm: figures.parallelOhm,
      Q_core: figures.q,
    };
  },
};

const capacitorLoss: Adapter = {
  family: 'parts',
  requires: ['C_F', 'f_Hz', 'tan_delta'],
  run: ({ C_F, f_Hz, tan_delta }) => {
    const farad = asNumber(C_F);
    if (!Array.isArray(f_Hz)) return { ESR_ohm: each(tan_delta, (tan) => dielectricOhm(farad, asNumber(f_Hz), tan)) };
    const tangents = asNumbers(tan_delta);
    return { ESR_ohm: asNumbers(f_Hz).map((hz, i) => dielectricOhm(farad, hz, tangents[i]!)) };
  },
};

const squareWinding: Adapter = {
  family: 'parts',
  requires: ['c_m', 'turns'],
  run: ({ c_m, turns }) => ({ L_H: brooksInductanceH(asNumber(c_m), asNumber(turns)) }),
};

const proximity: Adapter = {
  family: 'parts',
  requires: ['turns_per_side', 'pitch_m', 'wire_diameter_m', 'f_Hz', 'resistivity_ohm_m', 'inner_radius_m'],
  allows: ['L_from_formula_H'],
  run: ({ turns_per_side, pitch_m, wire_diameter_m, f_Hz, resistivity_ohm_m, inner_radius_m }) => {
    const side = asNumber(turns_per_side);
    const turns = Array.from({ length: side }, (_, layer) => layer).flatMap(() => Array.from({ length: side }));
    const laid = layTurns({
      innerRadiusM: asNumber(inner_radius_m),
      pitchM: asNumber(pitch_m),
      turnsPerLayer: side,
      turns: turns.length,
    });
    const [wireM, resistivityOhmM] = [asNumber(wire_diameter_m), asNumber(resistivity_ohm_m)];
    const fieldSum = squaredFieldSum(laid);
    return {
      R_dc_ohm: turnsOhm(laid, wireM, resistivityOhmM),
      R_proximity_ohm: each(f_Hz, (hz) => proximityOhm(fieldSum, wireM, resistivityOhmM, hz).ohm),
    };
  },
};

const circle = (radiusM: Json | undefined, centre: Vector): Circle => ({
  radiusM: asNumber(radiusM),
  centre,
  axis: [0, 0, 1],
});
const POINTS = 240;

const coaxialRings: Adapter = {
  family: 'coupling',
  requires: ['radius1_m', 'radius2_m', 'distance_m'],
  run: ({ radius1_m, radius2_m, distance_m }) => ({
    M_H: each(distance_m, (away) => ringMutualH(asNumber(radius1_m), asNumber(radius2_m), away)),
    M_dipole_H: each(distance_m, (away) =>
      dipoleMutualH(circle(radius1_m, [0, 0, 0]), circle(radius2_m, [0, 0, away])),
    ),
  }),
};

const ringsInOnePlane: Adapter = {
  family: 'coupling',
  requires: ['radius1_m', 'radius2_m', 'centre_distance_m'],
  run: ({ radius1_m, radius2_m, centre_distance_m }) => {
    const first = circle(radius1_m, [0, 0, 0]);
    return {
      M_H: each(centre_distance_m, (away) => circleMutualH(first, circle(radius2_m, [away, 0, 0]), POINTS)),
      M_dipole_estimate_H: each(centre_distance_m, (away) => dipoleMutualH(first, circle(radius2_m, [away, 0, 0]))),
    };
  },
};

const equalCoils: Adapter = {
  family: 'coupling',
  requires: ['c_m', 'distance_over_outer_diameter'],
  run: ({ c_m, distance_over_outer_diameter }) => {
    const section = brooksSection(asNumber(c_m), 1);
    const coupled = (centreAt: (awayM: number) => Vector): Json =>
      each(distance_over_outer_diameter, (diameters) =>
        couplingFactor(
          { section, centre: [0, 0, 0], axis: [0, 0, 1] },
          { section, centre: centreAt(outerDiametersM(section, diameters)), axis: [0, 0, 1] },
        ),
      );
    return {
      k_coaxial: coupled((awayM) => [0, 0, awayM]),
      k_side_by_side: coupled((awayM) => [awayM, 0, 0]),
    };
  },
};

export const adapters: readonly Adapter[] = [
  gauges,
  metricWire,
  singleLayer,
  multilayer,
  brooks,
  brooksDesign,
  coredCoil,
  capacitorLoss,
  squareWinding,
  proximity,
  coaxialRings,
  ringsInOnePlane,
  equalCoils,
];
