import { type PortShape, portSectionM2 } from './portShape.ts';

/**
 * Space that one port takes from its chamber, bore included, m³: `insideM` is its length behind the panel, `wallM` its wall.
 *
 * A tube has its wall all round; a slot shares the cabinet's walls and adds one inner panel along its wider side.
 *
 * Example: a tube of 70 mm bore, 3 mm wall, 0.18 m inside takes 0.82 L.
 */
export const portDisplacementM3 = (shape: PortShape, wallM: number, insideM: number): number => {
  if (shape.kind === 'round') return (Math.PI / 4) * (shape.diameterM + 2 * wallM) ** 2 * insideM;
  return (portSectionM2(shape) + Math.max(shape.widthM, shape.heightM) * wallM) * insideM;
};
