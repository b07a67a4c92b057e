import type { Port } from './schema.ts';

/** Gap between equal ports side by side, as a share of one port's width. */
export const PORT_GAP_SHARE = 0.25;

/** Outer size of one port's opening, m. */
export const portOpeningM = ({ shape }: Pick<Port, 'shape'>): { readonly widthM: number; readonly heightM: number } =>
  shape.kind === 'round'
    ? { widthM: shape.diameterM, heightM: shape.diameterM }
    : { widthM: shape.widthM, heightM: shape.heightM };

/** Centres of equal ports across, side by side about their common centre, m. */
export function portCentresM(port: Pick<Port, 'shape' | 'count' | 'xM'>): number[] {
  const pitch = portOpeningM(port).widthM * (1 + PORT_GAP_SHARE);
  return Array.from({ length: port.count }, (_, k) => port.xM + (k - (port.count - 1) / 2) * pitch);
}
