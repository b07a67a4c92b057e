import { type FilterShape, prototypePolynomial } from './filterShape.ts';
import { ladderElements } from './ladderElements.ts';

/** One element of a section from the source to the load, henry or farad. */
export interface FilterElement {
  readonly place: 'series' | 'shunt';
  readonly part: 'inductor' | 'capacitor';
  readonly value: number;
}

/**
 * Elements of a low-pass or high-pass from an ideal source into a resistance, in order from the source. In a high-pass each
 * element of the low-pass has become the one that resonates with it at the corner, a coil a capacitor and a capacitor a
 * coil.
 * @example filterElements('low-pass', { family: 'linkwitz-riley', order: 2 }, 2500, 8)
 */
export function filterElements(
  pass: 'low-pass' | 'high-pass',
  shape: FilterShape,
  cornerHz: number,
  loadOhm: number,
): FilterElement[] {
  const omega = 2 * Math.PI * cornerHz;
  return ladderElements(prototypePolynomial(shape), loadOhm, omega).map(({ kind, value }) => {
    const isSeries = kind === 'series-inductor';
    const place = isSeries ? 'series' : 'shunt';
    if (pass === 'low-pass') return { place, part: isSeries ? 'inductor' : 'capacitor', value };
    return { place, part: isSeries ? 'capacitor' : 'inductor', value: 1 / (omega * omega * value) };
  });
}
