import { type PortGeometry, portEffectiveLengthM, portEndCorrectionsM } from './portEffectiveLength.ts';
import type { PortShape } from './portShape.ts';

/**
 * One port as `count` equal ones of the same total section that tune the same chamber alike: smaller mouths want a longer bore.
 *
 * A tube's diameter falls by √count, a slot's longer side by count. The ports stand apart (no shared air); flares and bends as they
 * were. Each bore's wall grows, so its loss does too. Source: `portEffectiveLengthM`.
 *
 * Example: a 70 mm tube of 0.2 m, one end flanged, becomes two of 49.5 mm and 0.215 m
 */
export const splitPort = (port: PortGeometry, count: number): PortGeometry & { readonly count: number } => {
  if (!(Number.isInteger(count) && count >= 1)) throw new RangeError(`no port splits into ${count}`);
  const shape = splitShape(port.shape, count);
  const split = { ...port, shape };
  return { ...split, count, lengthM: portEffectiveLengthM(port) - portEndCorrectionsM(split) };
};

const splitShape = (shape: PortShape, count: number): PortShape => {
  if (shape.kind === 'round') return { kind: 'round', diameterM: shape.diameterM / Math.sqrt(count) };
  const { widthM, heightM } = shape;
  return widthM >= heightM
    ? { kind: 'slot', widthM: widthM / count, heightM }
    : { kind: 'slot', widthM, heightM: heightM / count };
};
