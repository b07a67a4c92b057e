import { workshopLength } from '../../../core/build/panels/index.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';

/** Lengths of a drawing or a sentence in one system, millimetres without their unit: @example sizeWords([0.94, 0.34], 'metric') // '940 × 340' */
export const sizeWords = (lengthsM: readonly number[], system: UnitSystem): string =>
  lengthsM
    .map((m) => workshopLength(m))
    .map(({ millimetres, inches }) => (system === 'metric' ? millimetres : `${inches}″`))
    .join(' × ');

/** The same with the unit where it is not there yet: @example sizeText([0.94, 0.34], 'metric') // '940 × 340 mm' */
export const sizeText = (lengthsM: readonly number[], system: UnitSystem): string =>
  `${sizeWords(lengthsM, system)}${system === 'metric' ? ' mm' : ''}`;
