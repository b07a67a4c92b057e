import { fibreResistivity, mineralWoolResistivity, polyesterResistivity } from './flowResistivity.ts';

/** A kind of filling with the figures that its effect is computed from. Every number here is a default that the user may change. */
export interface FillMaterial {
  readonly id: 'polyester-wadding' | 'long-fibre-wool' | 'glass-wool' | 'open-cell-foam';
  /** Null where it is not made of fibres. */
  readonly fibreDiameterM: number | null;
  readonly solidDensityKgPerM3: number;
  readonly solidHeatJPerKgK: number;
  /** Bulk density as it is usually laid in a cabinet. */
  readonly bulkDensityKgPerM3: { readonly least: number; readonly usual: number; readonly most: number };
  /** How its flow resistivity is found from the bulk density: a published law, that law scaled by solid fraction, or a plain figure. */
  readonly resistivityBasis: 'published law' | 'scaled law' | 'stated';
  /** Where the figures come from; 'from memory' means typical values of the trade, no source read again. */
  readonly source: 'from memory';
  readonly resistivityPaSPerM2: (bulkDensityKgPerM3: number) => number;
}

const WOOL_FIBRE_M = 25e-6;
const WOOL_KG_PER_M3 = 1310;
const GLASS_FIBRE_M = 6e-6;

/**
 * Common fillings. Fibre diameters, densities and heats from memory, spread of a factor 1.5 and more between products; resistivities within a
 * factor of two. Dusts of glass and mineral wool irritate: handle with gloves and mask, and keep them covered from the port and the cone.
 */
export const FILL_MATERIALS: readonly FillMaterial[] = [
  {
    id: 'polyester-wadding',
    fibreDiameterM: 20e-6,
    solidDensityKgPerM3: 1380,
    solidHeatJPerKgK: 1150,
    bulkDensityKgPerM3: { least: 5, usual: 10, most: 20 },
    resistivityBasis: 'published law',
    source: 'from memory',
    resistivityPaSPerM2: polyesterResistivity,
  },
  {
    id: 'long-fibre-wool',
    fibreDiameterM: WOOL_FIBRE_M,
    solidDensityKgPerM3: WOOL_KG_PER_M3,
    solidHeatJPerKgK: 1360,
    bulkDensityKgPerM3: { least: 5, usual: 8, most: 12 },
    resistivityBasis: 'scaled law',
    source: 'from memory',
    resistivityPaSPerM2: (bulk) => fibreResistivity(bulk, WOOL_FIBRE_M, WOOL_KG_PER_M3),
  },
  {
    id: 'glass-wool',
    fibreDiameterM: GLASS_FIBRE_M,
    solidDensityKgPerM3: 2500,
    solidHeatJPerKgK: 800,
    bulkDensityKgPerM3: { least: 10, usual: 16, most: 48 },
    resistivityBasis: 'published law',
    source: 'from memory',
    resistivityPaSPerM2: (bulk) => mineralWoolResistivity(bulk, GLASS_FIBRE_M),
  },
  {
    id: 'open-cell-foam',
    fibreDiameterM: null,
    solidDensityKgPerM3: 1200,
    solidHeatJPerKgK: 1400,
    bulkDensityKgPerM3: { least: 18, usual: 25, most: 40 },
    resistivityBasis: 'stated',
    source: 'from memory',
    // Acoustic grades run from 2000 to 15000 whatever their density.
    resistivityPaSPerM2: () => 5000,
  },
];
