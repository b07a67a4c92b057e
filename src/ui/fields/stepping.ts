import type { QuantityKind } from '../../core/units/quantityKind.ts';

/**
 * How arrow keys and dragging change a quantity.
 * `series`: along the chosen preferred values, dragged by a factor. `digit`: by one in the second digit, dragged by a
 * factor. `linear`: by an even step in the kind's inside unit, dragged in proportion.
 */
export type Stepping =
  | { readonly by: 'series' }
  | { readonly by: 'digit' }
  | { readonly by: 'linear'; readonly step: number; readonly imperialStep?: number };

const INCH_M = 0.0254;
const CUBIC_FOOT_M3 = (12 * INCH_M) ** 3;

/** Steps of the kinds that are not stepped by their second digit. */
const BY_KIND: Partial<Readonly<Record<QuantityKind, Stepping>>> = {
  resistance: { by: 'series' },
  capacitance: { by: 'series' },
  inductance: { by: 'series' },
  length: { by: 'linear', step: 1e-3, imperialStep: INCH_M / 16 },
  volume: { by: 'linear', step: 1e-4, imperialStep: 0.01 * CUBIC_FOOT_M3 },
  angle: { by: 'linear', step: 1 },
  temperature: { by: 'linear', step: 1 },
  ratio: { by: 'linear', step: 0.01 },
  plain: { by: 'linear', step: 0.01 },
  level: { by: 'linear', step: 0.1 },
};

/** How values of this kind are stepped where a field says nothing else. */
export const steppingOf = (kind: QuantityKind): Stepping => BY_KIND[kind] ?? { by: 'digit' };
