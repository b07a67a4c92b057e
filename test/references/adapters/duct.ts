import {
  closedInputImpedance,
  coneTwoPort,
  type DuctSection,
  ductPropagation,
  ductTwoPort,
  exponentialTwoPort,
  lineConstants,
  openEnd,
  openInputImpedance,
  roundDuct,
  type TwoPort,
  type ViscousAir,
  wideTubePropagation,
} from '../../../src/core/acoustics/index.ts';
import { angularFrequency } from '../../../src/core/circuit/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';
import { asNumber, asNumbers, asText } from '../convert.ts';

const AIR_KEYS = ['rho_kg_m3', 'c_m_s', 'gamma', 'Pr', 'mu_Pa_s'];

const airOf = (inputs: Inputs): ViscousAir => ({
  densityKgPerM3: asNumber(inputs.rho_kg_m3),
  soundSpeedMPerS: asNumber(inputs.c_m_s),
  heatCapacityRatio: asNumber(inputs.gamma),
  prandtl: asNumber(inputs.Pr),
  viscosityPaS: asNumber(inputs.mu_Pa_s),
});

/** Named numbers at one frequency, or a list under each name at a list of them. */
const atFrequencies = (f: Json | undefined, figures: (omega: number) => Record<string, number>): Json => {
  if (!Array.isArray(f)) return figures(angularFrequency(asNumber(f)));
  const all = asNumbers(f).map((hz) => figures(angularFrequency(hz)));
  return Object.fromEntries(Object.keys(all[0] ?? {}).map((name) => [name, all.map((one) => one[name] ?? null)]));
};

const parts = (name: string, z: { readonly re: number; readonly im: number }): Record<string, number> => ({
  [`${name}_re`]: z.re,
  [`${name}_im`]: z.im,
});

const ports = (twoPort: TwoPort): Record<string, number> => ({
  ...parts('A', twoPort.a),
  ...parts('B', twoPort.b),
  ...parts('C', twoPort.c),
  ...parts('D', twoPort.d),
  ...parts('Zin_closed', closedInputImpedance(twoPort)),
  ...parts('Zin_open', openInputImpedance(twoPort)),
});

const lineFigures = (section: DuctSection, air: ViscousAir, omega: number): Record<string, number> => {
  const { series, shunt } = lineConstants(section, air, omega);
  const { gammaPerM, impedancePaSPerM3 } = ductPropagation({ section, lengthM: 1 }, air, omega);
  return {
    ...parts('Zseries', series),
    ...parts('Yshunt', shunt),
    alpha_Np_m: gammaPerM.re,
    beta_rad_m: gammaPerM.im,
    ...parts('Zc', impedancePaSPerM3),
  };
};

const slit = (inputs: Inputs): DuctSection => ({
  kind: 'slit',
  gapM: asNumber(inputs.gap_m),
  widthM: asNumber(inputs.width_m),
});

const roundLine: Adapter = {
  family: 'duct',
  requires: ['f_Hz', 'radius_m', ...AIR_KEYS],
  run: (inputs) => {
    const [air, radiusM] = [airOf(inputs), asNumber(inputs.radius_m)];
    return atFrequencies(inputs.f_Hz, (omega) => {
      const wide = wideTubePropagation(radiusM, air, omega);
      return {
        ...lineFigures(roundDuct(radiusM), air, omega),
        alpha_wide_Np_m: wide.attenuationNpPerM,
        beta_wide_rad_m: wide.phaseRadPerM,
      };
    });
  },
};

const slitLine: Adapter = {
  family: 'duct',
  requires: ['f_Hz', 'gap_m', 'width_m', ...AIR_KEYS],
  run: (inputs) => atFrequencies(inputs.f_Hz, (omega) => lineFigures(slit(inputs), airOf(inputs), omega)),
};

const tube = (keys: readonly string[], sectionOf: (inputs: Inputs) => DuctSection): Adapter => ({
  family: 'duct',
  requires: ['f_Hz', ...keys, 'length_m', ...AIR_KEYS],
  run: (inputs) => {
    const duct = { section: sectionOf(inputs), lengthM: asNumber(inputs.length_m) };
    return atFrequencies(inputs.f_Hz, (omega) => ports(ductTwoPort(duct, airOf(inputs), omega)));
  },
});

const end: Adapter = {
  family: 'duct',
  requires: ['ka', 'end'],
  run: (inputs) => {
    const name = asText(inputs.end);
    if (name !== 'unflanged' && name !== 'flanged-piston') throw new RangeError(`no end is called ${name}`);
    const { reflection, endRadii, z } = openEnd(name === 'unflanged' ? 'free' : 'flanged', asNumber(inputs.ka));
    return { R_abs: reflection, delta_over_a: endRadii, ...parts('zr', z) };
  },
};

const cone: Adapter = {
  family: 'duct',
  requires: ['f_Hz', 'radius1_m', 'radius2_m', 'length_m', ...AIR_KEYS],
  allows: ['losses', 'slices'],
  run: (inputs) => {
    const air = airOf(inputs);
    const [nearRadiusM, farRadiusM] = [asNumber(inputs.radius1_m), asNumber(inputs.radius2_m)];
    const lengthM = asNumber(inputs.length_m);
    const lossy = {
      section: roundDuct(nearRadiusM),
      farSection: roundDuct(farRadiusM),
      lengthM,
      ...(inputs.slices === undefined ? {} : { slices: asNumber(inputs.slices) }),
    };
    return atFrequencies(inputs.f_Hz, (omega) =>
      ports(
        inputs.losses === false
          ? coneTwoPort({ nearRadiusM, farRadiusM, lengthM }, air, omega)
          : ductTwoPort(lossy, air, omega),
      ),
    );
  },
};

const exponential: Adapter = {
  family: 'duct',
  requires: ['f_Hz', 'area1_m2', 'area2_m2', 'length_m', 'losses', ...AIR_KEYS],
  run: (inputs) => {
    if (inputs.losses !== false) throw new RangeError('an exponential horn is computed without losses');
    const horn = {
      nearAreaM2: asNumber(inputs.area1_m2),
      farAreaM2: asNumber(inputs.area2_m2),
      lengthM: asNumber(inputs.length_m),
    };
    return atFrequencies(inputs.f_Hz, (omega) => ports(exponentialTwoPort(horn, airOf(inputs), omega)));
  },
};

export const adapters: readonly Adapter[] = [
  roundLine,
  slitLine,
  tube(['radius_m'], (inputs) => roundDuct(asNumber(inputs.radius_m))),
  tube(['gap_m', 'width_m'], slit),
  end,
  cone,
  exponential,
];
