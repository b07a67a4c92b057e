import type { QuantityKind } from '../../units/quantityKind.ts';

export type DrawerKind = 'resistor' | 'capacitor' | 'inductor';

/** A row of a personal parts drawer. null: not stated. */
export interface DrawerPart {
  readonly kind: DrawerKind;
  /** Ohm, farad or henry. */
  readonly value: number;
  /** Symmetrical, a ratio: 0.05 for ±5 %. */
  readonly tolerance: number | null;
  /** Series resistance of a capacitor or coil, ohm. */
  readonly resistanceOhm: number | null;
  /** W of a resistor, V of a capacitor, A (rms) of a coil. */
  readonly rating: number | null;
  /** In the person's own currency. */
  readonly price: number | null;
  /** Pieces at hand; null: as many as are needed. */
  readonly count: number | null;
  readonly note: string;
}

/** What the columns of each kind hold. */
export const KIND_QUANTITIES: Readonly<
  Record<DrawerKind, { readonly value: QuantityKind; readonly rating: QuantityKind; readonly ratingUnit: string }>
> = {
  resistor: { value: 'resistance', rating: 'power', ratingUnit: 'W' },
  capacitor: { value: 'capacitance', rating: 'voltage', ratingUnit: 'V' },
  inductor: { value: 'inductance', rating: 'current', ratingUnit: 'A' },
};

export const DRAWER_COLUMNS = ['kind', 'value', 'tolerance', 'resistance', 'rating', 'price', 'count', 'note'] as const;
export type DrawerColumn = (typeof DRAWER_COLUMNS)[number];
