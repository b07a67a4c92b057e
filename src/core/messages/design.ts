import type { WordingByCode } from './problem.ts';
import { litres, millimetres } from './shortFigures.ts';

/** Sentences of the codes that begin with `design.`. */
export const designWording: WordingByCode = {
  'design.several-ports': (v) => ({
    sentence: `The chamber "${v.name}" has several kinds of port, so that no single length gives the tuning.`,
    remedy: 'Remove all but one of them, or set their lengths by hand.',
  }),
  'design.no-back': (v) => ({
    sentence: `The chamber "${v.name}" has no port, and it does not reach the back of the cabinet, where a new one would go.`,
    remedy: 'Add a port to it on the front first; its section is kept.',
  }),
  'design.tube-too-wide': (v) => ({
    sentence: `The port for "${v.name}" would have to be ${millimetres(v.diameterM)} wide, but the cabinet leaves ${millimetres(v.clearM)} inside.`,
    remedy: 'Make the cabinet larger, or add a slot or several smaller ports first.',
  }),
  'design.no-room': (v) => ({
    sentence: `The chamber "${v.name}" would have to be ${litres(v.grossM3)} gross instead of ${litres(v.presentM3)}, and neither its top nor its bottom can move so far: the cabinet, another chamber, a driver or a port is in the way.`,
    remedy: 'Change the size of the cabinet or the chambers beside it, or state the volume as a number.',
  }),
};
