import type { WordingByCode } from './problem.ts';
import { millimetres, ohms } from './shortFigures.ts';

const millihenries = (value: string | number | undefined): string =>
  `${Number((Number(value) * 1000).toPrecision(3))} mH`;

/** Sentences of the codes that begin with `winding.`. */
export const windingWording: WordingByCode = {
  'winding.bobbin-too-narrow': (v) => ({
    sentence: `A bobbin ${millimetres(v.lengthM)} wide does not take one turn of a wire ${millimetres(v.wireM)} thick.`,
    remedy: 'Choose a wider bobbin or a thinner wire.',
  }),
  'winding.too-many-turns': (v) => ({
    sentence: `A coil of ${millihenries(v.henry)} needs more than ${v.most} turns on this bobbin.`,
    remedy: 'Choose a larger bobbin, or a coil with a core.',
  }),
  'winding.no-wire': () => ({
    sentence: 'There is no wire to wind the coil of.',
    remedy: 'Add a wire with its diameter.',
  }),
  'winding.ohm-out-of-reach': (v) => ({
    sentence: `An air coil of ${millihenries(v.henry)} has at least ${ohms(v.leastOhm)} with the thickest wire, more than the ${ohms(v.ohm)} that are wanted.`,
    remedy: 'Allow more resistance, add a thicker wire, or choose a coil with a core.',
  }),
};
