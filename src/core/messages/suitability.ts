import { formatFigure } from './formatFigure.ts';
import type { ProblemValues, WordingByCode } from './problem.ts';
import { decibels, hertz, litres } from './shortFigures.ts';

const q = (value: string | number | undefined): string => formatFigure(Number(value), 2);
const PRACTICE = '(common practice, no source)';

/** What a passive radiator in place of a port needs besides. */
const radiatorWords = (v: ProblemValues): string =>
  v.radiator === undefined
    ? ''
    : ` The radiator has to move more air than the driver: twice the cone’s area times stroke is usual ${PRACTICE}.`;

/** Why a driver suits a kind of enclosure or does not: sentences of `suitability`, which end without saying which box is meant. */
export const suitabilityWording: WordingByCode = {
  'suitability.unreadable': () => ({
    sentence: 'The numbers of the driver are not those of a driver.',
    remedy: 'Check its data sheet.',
  }),
  'suitability.sealed-high-q': (v) => ({
    sentence: `Qts = ${q(v.qts)} is above 0.71, and a sealed box only raises it: the bass swells before it falls, more so the smaller the box.`,
    remedy: 'Use a large box with filling, or an open baffle, or choose a driver with a lower Qts.',
  }),
  'suitability.sealed-high-ebp': (v) => ({
    sentence: `fs/Qes (EBP) = ${hertz(v.ebpHz)} is above ${hertz(v.limitHz)} ${PRACTICE}: flat in a sealed ${litres(v.volumeM3)}, it begins only at ${hertz(v.f3Hz)}.`,
    remedy: 'A vented box reaches lower with this driver.',
  }),
  'suitability.sealed-flat': (v) => ({
    sentence: `Flat in a sealed ${litres(v.volumeM3)} from ${hertz(v.f3Hz)}; fs/Qes (EBP) = ${hertz(v.ebpHz)}.`,
    remedy: 'Nothing stands against it.',
  }),
  'suitability.vented-none': (v) => ({
    sentence:
      Number(v.most) > Number(v.least)
        ? `Qts = ${q(v.qts)} has no flat vented box with QL = ${q(v.ql)}: those exist from ${q(v.least)} to ${q(v.most)}.`
        : `No flat vented box exists with a leak of QL = ${q(v.ql)}.`,
    remedy: 'Close the chamber for a sealed box, or choose a driver whose Qts lies in that range.',
  }),
  'suitability.vented-low-ebp': (v) => ({
    sentence: `fs/Qes (EBP) = ${hertz(v.ebpHz)} is below ${hertz(v.limitHz)} ${PRACTICE}: flat in ${litres(v.volumeM3)} tuned to ${hertz(v.tuningHz)}, but a sealed box is the usual choice.${radiatorWords(v)}`,
    remedy: 'Compare it with the sealed box.',
  }),
  'suitability.vented-large': (v) => ({
    sentence: `The flat box takes ${litres(v.volumeM3)}, ${formatFigure(Number(v.volumeM3) / Number(v.vasM3), 2)} times Vas, tuned to ${hertz(v.tuningHz)}.${radiatorWords(v)}`,
    remedy: 'A smaller box is possible with a rise before the roll-off.',
  }),
  'suitability.vented-flat': (v) => ({
    sentence: `Flat in ${litres(v.volumeM3)} tuned to ${hertz(v.tuningHz)}, from ${hertz(v.f3Hz)}; fs/Qes (EBP) = ${hertz(v.ebpHz)}.${radiatorWords(v)}`,
    remedy: 'Nothing stands against it.',
  }),
  'suitability.band-pass': (v) => ({
    sentence:
      Number(v.qts) >= Number(v.most)
        ? `Qts = ${q(v.qts)} is too high for a band-pass: its rear chamber only raises it, and ${q(v.most)} is the end ${PRACTICE}.`
        : `Qts = ${q(v.qts)}, where ${q(v.least)} to ${q(v.good)} is usual for a band-pass ${PRACTICE}.`,
    remedy:
      Number(v.qts) >= Number(v.most) ? 'Choose a driver with a lower Qts.' : 'Look at width and gain of the band.',
  }),
  'suitability.open-baffle': (v) => ({
    sentence: `Qts = ${q(v.qts)}: without a box the level at ${hertz(v.fsHz)} lies ${decibels(Math.abs(Number(v.levelDb)))} ${Number(v.levelDb) < 0 ? 'below' : 'above'} that of the band above it, and the baffle takes more of the bass; from Qts = 0.7 up the bass holds.`,
    remedy: 'A lower Qts asks for a larger baffle, equalisation or a box.',
  }),
};
