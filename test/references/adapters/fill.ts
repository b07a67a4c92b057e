import {
  adiabaticModulusPa,
  allardChampouxFluid,
  closedInputImpedance,
  complianceQ,
  cornerOfTimeHz,
  delanyBazleyFluid,
  ductTwoPort,
  type EquivalentFluid,
  fibreCellTimeS,
  fibreHeat,
  fluidAttenuationDbPerM,
  fluidPhaseSpeedMPerS,
  fluidVolumeFactor,
  fluidWave,
  gasSoundSpeedMPerS,
  mikiFluid,
  relaxingComplianceM3PerPa,
  squareDuct,
  thermalCornerHz,
  thermalPermeabilityModulus,
  type ViscousAir,
} from '../../../src/core/acoustics/index.ts';
import { angularFrequency } from '../../../src/core/circuit/index.ts';
import type { Adapter, Inputs, Json } from '../adapter.ts';
import { asNumber, asNumbers, asText } from '../convert.ts';

const AIR_KEYS = ['rho_kg_m3', 'c_m_s', 'gamma', 'Pr', 'mu_Pa_s'];

/** Where the static pressure is stated, the gas has the speed of sound that goes with it. */
const airOf = (inputs: Inputs): ViscousAir => {
  const [densityKgPerM3, heatCapacityRatio] = [asNumber(inputs.rho_kg_m3), asNumber(inputs.gamma)];
  return {
    densityKgPerM3,
    heatCapacityRatio,
    soundSpeedMPerS:
      inputs.P0_Pa === undefined
        ? asNumber(inputs.c_m_s)
        : gasSoundSpeedMPerS(asNumber(inputs.P0_Pa), heatCapacityRatio, densityKgPerM3),
    prandtl: asNumber(inputs.Pr),
    viscosityPaS: asNumber(inputs.mu_Pa_s),
  };
};

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

const fluidOf = (model: string, sigma: number, air: ViscousAir): EquivalentFluid => {
  if (model === 'delany-bazley') return delanyBazleyFluid(sigma, air);
  if (model === 'miki') return mikiFluid(sigma, air);
  if (model === 'allard-champoux') return allardChampouxFluid(sigma, air);
  throw new RangeError(`no fill model is called ${model}`);
};

const model: Adapter = {
  family: 'fill',
  requires: ['f_Hz', 'sigma_Pa_s_m2', 'model', ...AIR_KEYS],
  allows: ['P0_Pa'],
  run: (inputs) => {
    const fluid = fluidOf(asText(inputs.model), asNumber(inputs.sigma_Pa_s_m2), airOf(inputs));
    return atFrequencies(inputs.f_Hz, (omega) => {
      const state = fluid(omega);
      const wave = fluidWave(state, omega);
      return {
        ...parts('rho_eff', state.densityKgPerM3),
        ...parts('K_eff', state.modulusPa),
        ...parts('Zc', wave.impedancePaSPerM),
        ...parts('k', wave.wavenumberPerM),
      };
    });
  },
};

const gain: Adapter = {
  family: 'fill',
  requires: [
    'fibre_diameter_m',
    'bulk_density_kg_m3',
    'fibre_density_kg_m3',
    'fibre_cp_J_kgK',
    'air_cp_J_kgK',
    ...AIR_KEYS,
  ],
  run: (inputs) => {
    const air = airOf(inputs);
    const fibres = {
      bulkDensityKgPerM3: asNumber(inputs.bulk_density_kg_m3),
      solidDensityKgPerM3: asNumber(inputs.fibre_density_kg_m3),
      solidHeatJPerKgK: asNumber(inputs.fibre_cp_J_kgK),
    };
    const heat = fibreHeat(fibres, air, asNumber(inputs.air_cp_J_kgK));
    const timeS = fibreCellTimeS(asNumber(inputs.fibre_diameter_m), heat.solidFraction, air);
    return {
      solid_fraction: heat.solidFraction,
      tau_s: timeS,
      f_transition_Hz: cornerOfTimeHz(timeS),
      gamma_eff_lowf: heat.effectiveRatio,
      volume_factor_lowf: heat.volumeFactor,
    };
  },
};

const relaxation: Adapter = {
  family: 'fill',
  requires: ['f_Hz', 'volume_m3', 'tau_s', ...AIR_KEYS],
  run: (inputs) =>
    atFrequencies(inputs.f_Hz, (omega) => {
      const compliance = relaxingComplianceM3PerPa(
        asNumber(inputs.volume_m3),
        asNumber(inputs.tau_s),
        airOf(inputs),
        omega,
      );
      return { ...parts('C_ab', compliance), Q_of_air: complianceQ(compliance) };
    }),
};

const corner: Adapter = {
  family: 'fill',
  requires: ['sigma_Pa_s_m2', ...AIR_KEYS],
  run: (inputs) => {
    const air = airOf(inputs);
    const sigma = inputs.sigma_Pa_s_m2;
    const corners = (Array.isArray(sigma) ? asNumbers(sigma) : [asNumber(sigma)]).map((s) => thermalCornerHz(s, air));
    const usual = corners.map((found) => found.usual);
    const least = corners.map((found) => found.least);
    return {
      f_t_k0prime_2k0_Hz: Array.isArray(sigma) ? usual : usual[0]!,
      f_t_allard_champoux_Hz: Array.isArray(sigma) ? least : least[0]!,
    };
  },
};

const permeability: Adapter = {
  family: 'fill',
  requires: ['f_Hz', 'porosity', 'Lambda_t_m', 'k0prime_m2', ...AIR_KEYS],
  allows: ['P0_Pa'],
  run: (inputs) => {
    const air = airOf(inputs);
    const pores = {
      porosity: asNumber(inputs.porosity),
      thermalLengthM: asNumber(inputs.Lambda_t_m),
      thermalPermeabilityM2: asNumber(inputs.k0prime_m2),
    };
    return atFrequencies(inputs.f_Hz, (omega) => {
      const modulusPa = thermalPermeabilityModulus(pores, air, omega);
      return {
        ...parts('K', modulusPa),
        ...parts('volume_factor', fluidVolumeFactor(modulusPa, adiabaticModulusPa(air))),
      };
    });
  },
};

const stuffedLine: Adapter = {
  family: 'fill',
  requires: ['f_Hz', 'sigma_Pa_s_m2', 'length_m', 'area_m2', ...AIR_KEYS],
  allows: ['P0_Pa'],
  run: (inputs) => {
    const air = airOf(inputs);
    const fluid = allardChampouxFluid(asNumber(inputs.sigma_Pa_s_m2), air);
    const duct = { section: squareDuct(asNumber(inputs.area_m2)), lengthM: asNumber(inputs.length_m), fluid };
    return atFrequencies(inputs.f_Hz, (omega) => {
      const wave = fluidWave(fluid(omega), omega);
      return {
        alpha_dB_m: fluidAttenuationDbPerM(wave),
        phase_speed_m_s: fluidPhaseSpeedMPerS(wave, omega),
        ...parts('Zin_closed', closedInputImpedance(ductTwoPort(duct, air, omega))),
      };
    });
  },
};

export const adapters: readonly Adapter[] = [model, gain, relaxation, corner, permeability, stuffedLine];
