import { PORT_GAP_SHARE, portCentresM, portOpeningM } from '../../../core/document/portCentres.ts';
import type { Port } from '../../../core/document/schema.ts';
import type { Footprint } from './keepOnBaffle.ts';

/** Size of one port's opening. */
export const openingM = (port: Port): { readonly widthM: number; readonly heightM: number } => portOpeningM(port);

/** Centres of the equal ports across, about the common centre: the drawing sets them side by side. */
export const openingCentresM = (port: Port): number[] => portCentresM(port);

/** What all openings of a port cover of its face. */
export function portFootprint(port: Port): Footprint {
  const { widthM, heightM } = openingM(port);
  return { halfWidthM: (widthM * (port.count + (port.count - 1) * PORT_GAP_SHARE)) / 2, halfHeightM: heightM / 2 };
}
