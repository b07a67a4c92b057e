import { formatFigure } from './formatFigure.ts';
import type { ProblemValues, WordingByCode } from './problem.ts';
import { hertz, litres, millimetres } from './shortFigures.ts';

const q = (value: ProblemValues[string] | undefined): string =>
  typeof value === 'number' ? formatFigure(value, 3) : 'no number';
const leak = (v: ProblemValues): string => (v.ql === 'none' ? 'without a leak' : `with QL = ${q(v.ql)}`);

/** Sentences of boxes that cannot be: alignments that a driver does not have, wishes that no wood grants. */
export const alignmentsWording: WordingByCode = {
  'design.map-unreadable': () => ({
    sentence: 'The driver, the port or the ranges of the map hold numbers that are not above zero.',
    remedy: 'Complete the driver’s data sheet and give the port a cross-section.',
  }),
  'design.map-mixed-drivers': (v) => ({
    sentence: `Several kinds of driver, or equal ones on different voltages, share chamber “${v.name}”: no alignment speaks of that.`,
    remedy: 'Give each kind a chamber of its own; the response plot above computes them together.',
  }),
  'design.map-other-outlets': (v) => ({
    sentence: `Chamber “${v.name}” has ${v.what}: the map knows sealed boxes and boxes with one kind of port to the outside.`,
    remedy: 'Take these out for a sealed box, or judge it by the response plot above.',
  }),
  'design.map-no-driver': (v) => ({
    sentence: `No driver has chamber “${v.name}” behind it alone.`,
    remedy: 'Choose this chamber as the air behind a driver, with the air outside in front of it.',
  }),
  'design.depth-fixed': (v) => ({
    sentence: `The depth of chamber “${v.name}” does not follow the cabinet’s.`,
    remedy: 'Give the chamber its full depth, or state its volume as a number.',
  }),
  'design.needs-chamber': (v) => ({
    sentence: `${v.name} has no chamber behind it.`,
    remedy: 'Choose the air behind it first, or add a chamber.',
  }),
  'design.no-band-pass-port': (v) => ({
    sentence: `No port of 25 mm or more tunes a front chamber of ${litres(v.volumeM3)} to ${hertz(v.tuningHz)}.`,
    remedy: 'Make the rear chamber larger, which lowers the band.',
  }),
  'design.alignment-unreadable': (v) => ({
    sentence: `${v.family}: no box can be worked out for a driver with Qts = ${q(v.qts)}.`,
    remedy: `Check the data sheet; Qts from ${q(v.least)} to ${q(v.most)} is looked at.`,
  }),
  'design.alignment-one-q': (v) => ({
    sentence: `${v.family} suits one driver Q alone, Qts = ${q(v.limit)} ${leak(v)}; this driver has ${q(v.qts)}.`,
    remedy: 'Choose a family that the list offers for this Qts.',
  }),
  'design.alignment-below': (v) => ({
    sentence: `${v.family} is for drivers whose Qts is below ${q(v.limit)} (${leak(v)}); this driver has ${q(v.qts)}.`,
    remedy: 'C4 is the family for a higher Qts.',
  }),
  'design.alignment-above': (v) => ({
    sentence: `${v.family} is for drivers whose Qts is above ${q(v.limit)} (${leak(v)}); this driver has ${q(v.qts)}.`,
    remedy: 'QB3 and SC4 are the families for a lower Qts.',
  }),
  'design.alignment-too-high': (v) => ({
    sentence: `${v.family} ends below Qts = ${q(v.qts)} ${leak(v)}: no volume is left for it.`,
    remedy: 'Take the port out for a sealed box, or choose a driver with a lower Qts.',
  }),
  'design.alignment-too-low': (v) => ({
    sentence: `${v.family} has no box for a Qts as low as ${q(v.qts)} ${leak(v)}.`,
    remedy: 'QB3 reaches lower Qts.',
  }),
  'design.alignment-too-large': (v) => ({
    sentence: `${v.family} asks for more than ten times Vas with Qts = ${q(v.qts)}.`,
    remedy: 'Choose another family, or a driver with a lower Qts.',
  }),
  'design.alignment-leak': (v) => ({
    sentence: `${v.family} does not exist with a leak as strong as QL = ${q(v.ql)}.`,
    remedy: 'Close the leak: a well-made box has about QL = 7 (common practice, no source).',
  }),
  'design.no-air-left': (v) => ({
    sentence:
      typeof v.volumeM3 === 'number'
        ? `The chamber would hold ${litres(v.volumeM3)} of air: drivers, ports and braces take all there is.`
        : 'The chamber’s volume is not a number.',
    remedy: 'Make the chamber larger, or take a port or brace out of it.',
  }),
  'design.tuning-above-pipe': (v) => ({
    sentence: `A tuning of ${hertz(v.tuningHz)} would need a port of ${millimetres(v.lengthM)}, which is a quarter of a wave long at ${hertz(v.pipeHz)} already: no port tunes a box above that.`,
    remedy: 'Use a narrower port or a larger chamber, or a higher tuning, so that the port becomes shorter.',
  }),
  'design.port-longer-than-box': (v) => ({
    sentence: `A tuning of ${hertz(v.tuningHz)} needs a port of ${millimetres(v.lengthM)}, and ${millimetres(v.insideM)} fit inside.`,
    remedy: 'Bend the port, make it narrower, tune higher, or make the chamber larger or deeper.',
  }),
};
