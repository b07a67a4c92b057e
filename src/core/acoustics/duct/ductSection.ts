/**
 * Cross-section of a duct. `round` and `slot` as in a port; `slit` is a pair of plates whose side walls are left out (narrow gaps);
 * `any` is a shape of which area and perimeter are known.
 */
export type DuctSection =
  | { readonly kind: 'round'; readonly diameterM: number }
  | { readonly kind: 'slot'; readonly widthM: number; readonly heightM: number }
  | { readonly kind: 'slit'; readonly gapM: number; readonly widthM: number }
  | { readonly kind: 'any'; readonly areaM2: number; readonly perimeterM: number };

/** A round section from its radius. */
export const roundDuct = (radiusM: number): DuctSection => ({ kind: 'round', diameterM: 2 * radiusM });

/** A square section of an area. */
export const squareDuct = (areaM2: number): DuctSection => ({
  kind: 'any',
  areaM2,
  perimeterM: 4 * Math.sqrt(areaM2),
});

/** Clear area of a section, m². */
export const ductAreaM2 = (section: DuctSection): number => {
  if (section.kind === 'round') return (Math.PI / 4) * section.diameterM ** 2;
  if (section.kind === 'slot') return section.widthM * section.heightM;
  if (section.kind === 'slit') return section.gapM * section.widthM;
  return section.areaM2;
};

/** Length of wall that the air rubs along, m; of a slit its two plates. */
export const ductPerimeterM = (section: DuctSection): number => {
  if (section.kind === 'round') return Math.PI * section.diameterM;
  if (section.kind === 'slot') return 2 * (section.widthM + section.heightM);
  if (section.kind === 'slit') return 2 * section.widthM;
  return section.perimeterM;
};

/** Radius of the circle of the section's area, m. */
export const ductRadiusM = (section: DuctSection): number => Math.sqrt(ductAreaM2(section) / Math.PI);

/**
 * Section at a share (0 to 1) of the way between two of one kind: each of its own measures goes along a straight line.
 *
 * A slot of constant width, and `any`, so have an area that varies linearly; a round duct is a cone.
 * Throws a RangeError when the kinds differ.
 */
export const ductSectionBetween = (from: DuctSection, to: DuctSection, share: number): DuctSection => {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  if (from.kind === 'round' && to.kind === 'round')
    return { kind: 'round', diameterM: mix(from.diameterM, to.diameterM) };
  if (from.kind === 'slot' && to.kind === 'slot')
    return { kind: 'slot', widthM: mix(from.widthM, to.widthM), heightM: mix(from.heightM, to.heightM) };
  if (from.kind === 'slit' && to.kind === 'slit')
    return { kind: 'slit', gapM: mix(from.gapM, to.gapM), widthM: mix(from.widthM, to.widthM) };
  if (from.kind === 'any' && to.kind === 'any')
    return { kind: 'any', areaM2: mix(from.areaM2, to.areaM2), perimeterM: mix(from.perimeterM, to.perimeterM) };
  throw new RangeError(`a ${from.kind} section cannot turn into a ${to.kind} one along a duct`);
};
