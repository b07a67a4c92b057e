/** Bore of a port: a round tube by its inner diameter, or a slot by its clear width and height, m. */
export type PortShape =
  | { readonly kind: 'round'; readonly diameterM: number }
  | { readonly kind: 'slot'; readonly widthM: number; readonly heightM: number };

/**
 * How a port ends: `free` in open air with a thin wall, `flanged` flush in a wide panel, `on-wall` flush in a panel while its long
 * side (for a tube: its rim) touches a second wall at right angles, as a slot along the cabinet's bottom does, `in-corner` while it
 * touches two such walls.
 */
export type PortEnd = 'free' | 'flanged' | 'on-wall' | 'in-corner';

/** Clear cross-section of one port, m². */
export const portSectionM2 = (shape: PortShape): number =>
  shape.kind === 'round' ? (Math.PI / 4) * shape.diameterM ** 2 : shape.widthM * shape.heightM;

/** A tube by the radius of its bore. */
export const roundOfRadius = (radiusM: number): PortShape => ({ kind: 'round', diameterM: 2 * radiusM });
