import type { Port } from '../../../core/document/schema.ts';
import type { Footprint } from './keepOnBaffle.ts';

/** Gap between equal ports in the drawing, as a share of one port's width. */
const GAP_SHARE = 0.25;

/** Size of one port's opening. */
export const openingM = (port: Port): { readonly widthM: number; readonly heightM: number } =>
  port.shape.kind === 'round'
    ? { widthM: port.shape.diameterM, heightM: port.shape.diameterM }
    : { widthM: port.shape.widthM, heightM: port.shape.heightM };

/** Centres of the equal ports across, about the common centre: the drawing sets them side by side. */
export function openingCentresM(port: Port): number[] {
  const pitch = openingM(port).widthM * (1 + GAP_SHARE);
  return Array.from({ length: port.count }, (_, k) => port.xM + (k - (port.count - 1) / 2) * pitch);
}

/** What all openings of a port cover of its face. */
export function portFootprint(port: Port): Footprint {
  const { widthM, heightM } = openingM(port);
  return { halfWidthM: (widthM * (port.count + (port.count - 1) * GAP_SHARE)) / 2, halfHeightM: heightM / 2 };
}
