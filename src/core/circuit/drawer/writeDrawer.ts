import { formatQuantity, quantityText } from '../../units/formatQuantity.ts';
import type { QuantityKind } from '../../units/quantityKind.ts';
import { DRAWER_COLUMNS, type DrawerColumn, type DrawerPart, KIND_QUANTITIES } from './drawerPart.ts';

const DIGITS = 12;

/**
 * Writes a parts drawer as comma-separated text (RFC 4180, lines ended by CR LF) with people's units, twelve digits at most.
 * `readDrawer` reads it back.
 * @example writeDrawer([part]) // 'kind,value,...\r\ncapacitor,6.8 µF,5 %,...\r\n'
 */
export const writeDrawer = (parts: readonly DrawerPart[]): string =>
  [[...DRAWER_COLUMNS], ...parts.map(cellsOf)].map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('');

function cellsOf(part: DrawerPart): string[] {
  const { value: valueKind, rating: ratingKind } = KIND_QUANTITIES[part.kind];
  const texts: Readonly<Record<DrawerColumn, string>> = {
    kind: part.kind,
    value: amount(part.value, valueKind),
    tolerance: amount(part.tolerance, 'ratio'),
    resistance: amount(part.resistanceOhm, 'resistance'),
    rating: amount(part.rating, ratingKind),
    price: amount(part.price, 'plain'),
    count: amount(part.count, 'plain'),
    note: part.note,
  };
  return DRAWER_COLUMNS.map((column) => texts[column]);
}

const amount = (value: number | null, kind: QuantityKind): string =>
  value === null ? '' : quantityText(formatQuantity(value, kind, 'metric', DIGITS));

const quoted = (cell: string): string => (/[",;\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
