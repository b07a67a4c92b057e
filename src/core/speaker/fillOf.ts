import { FILL_MATERIALS, type FibreFill, thermalCornerHz } from '../acoustics/fill/index.ts';
import type { ViscousAir } from '../acoustics/viscousAir.ts';
import type { Filling } from '../document/schema.ts';

/** What a stated filling is to the air: its flow resistivity as given or estimated from its weight, its heat, its corner. */
export function fillOf(
  {
    material,
    densityKgPerM3,
    flowResistivityPaSPerM2,
  }: Pick<Filling, 'material' | 'densityKgPerM3' | 'flowResistivityPaSPerM2'>,
  air: ViscousAir,
): FibreFill {
  const known = FILL_MATERIALS.find(({ id }) => id === material);
  if (known === undefined) throw new RangeError(`There is no filling material ${material}.`);
  const resistivityPaSPerM2 = flowResistivityPaSPerM2 ?? known.resistivityPaSPerM2(densityKgPerM3);
  return {
    resistivityPaSPerM2,
    bulkDensityKgPerM3: densityKgPerM3,
    solidDensityKgPerM3: known.solidDensityKgPerM3,
    solidHeatJPerKgK: known.solidHeatJPerKgK,
    thermalCornerHz: thermalCornerHz(resistivityPaSPerM2, air).usual,
  };
}
