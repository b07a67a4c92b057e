import type { Part } from '../../../../core/circuit/part.ts';
import { nearestPreferred } from '../../../../core/units/nearestPreferred.ts';
import type { SeriesName } from '../../../../core/units/preferredSeries.ts';

/** A section's parts at the preferred values nearest by ratio; zero resistances stay zero. */
export function roundedSection(parts: readonly Part[], series: SeriesName): Part[] {
  const nearest = (value: number) => (value > 0 ? nearestPreferred(value, series, 'log') : value);
  return parts.map((part) => {
    switch (part.kind) {
      case 'resistor':
        return { ...part, ohm: nearest(part.ohm) };
      case 'capacitor':
        return { ...part, farad: nearest(part.farad) };
      case 'inductor':
        return { ...part, henry: nearest(part.henry) };
      default:
        return part;
    }
  });
}
