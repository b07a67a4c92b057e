import type { WordingByCode } from './problem.ts';
import { decibels, hertz, metresPerSecond, millimetres, ohms, watts } from './shortFigures.ts';

/** Sentences of the design flaws. */
export const findingsWording: WordingByCode = {
  'finding.least-impedance': (v) => ({
    sentence: `Impedance falls to ${ohms(v.ohm)} at ${hertz(v.atHz)}; the amplifier is rated for no less than ${ohms(v.ratedOhm)}.`,
    remedy:
      'Put more resistance in its way, for example a resistor in series with the driver that dips there or with the shunt capacitor, or state another amplifier.',
  }),
  'finding.resistor-power': (v, place) => ({
    sentence: `${place.id} would turn ${watts(v.powerW)} into heat from a sine of ${hertz(v.atHz)} at this drive; it is rated ${watts(v.ratedW)}.`,
    remedy:
      'Use a larger resistor, mount it clear of board and filling, or lower the drive. It gets hot enough to burn.',
  }),
  'finding.coil-power': (v, place) => ({
    sentence: `The voice coil of ${place.id} would take ${watts(v.powerW)} from a sine of ${hertz(v.atHz)} at this drive; it is rated ${watts(v.ratedW)}.`,
    remedy: 'Lower the drive, or let the crossover cut earlier.',
  }),
  'finding.excursion': (v, place) => ({
    sentence: `${place.id} passes its linear excursion from ${hertz(v.lowHz)} to ${hertz(v.highHz)}: ${millimetres(v.peakM)} of ${millimetres(v.limitM)} one way, peak, worst at ${hertz(v.atHz)}.`,
    remedy:
      'Lower the drive, tune the chamber lower or make it smaller, or put an active high-pass before the amplifier.',
  }),
  'finding.port-loud': (v, place) => ({
    sentence: `Air in ${place.id} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; above about ${metresPerSecond(v.guideMPerS)} a port is likely heard (a guide value, not a limit; from memory).`,
    remedy: 'Give the port more area, which also asks for more length, or lower the drive.',
  }),
  'finding.port-careful': (v, place) => ({
    sentence: `Air in ${place.id} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; straight edges are often heard from about ${metresPerSecond(v.guideMPerS)} (a guide value, not a limit; from memory).`,
    remedy: 'Round the ends of the port, or give it more area.',
  }),
  'finding.crossover-polarity': (v) => ({
    sentence: `${v.first} and ${v.second} work against each other at ${hertz(v.atHz)}: with one of them reversed the sum there would be ${decibels(v.gainDb)} higher.`,
    remedy: `Reverse ${v.second} and look at the sum; if it is no better, move a crossover frequency or slope.`,
  }),
  'finding.curve-begins-late': (v) => ({
    sentence: `“${v.name}” begins at ${hertz(v.fromHz)} but is to be used from ${hertz(v.neededHz)}: between them its first value is held.`,
    remedy: 'Raise the blend frequency, or use a curve that reaches lower.',
  }),
  'finding.curve-ends-early': (v) => ({
    sentence: `“${v.name}” ends at ${hertz(v.toHz)}; above that its last value is held.`,
    remedy: 'Do not trust the prediction above the end of the curve.',
  }),
  'finding.impedance-phase': (v) => ({
    sentence: `“${v.name}” turns by ${Math.round(Number(v.deg))}° at ${hertz(v.atHz)}, which no passive load does.`,
    remedy: 'Check the phase column and its unit, or load the impedance without phase.',
  }),
  'finding.silent-way': (v, place) => ({
    sentence: `${place.id} is never heard: at its loudest it stays ${decibels(v.belowDb)} below the mean level.`,
    remedy: 'Look for a value in its crossover that is off by a decade, or for a part that shorts or cuts it off.',
  }),
  'finding.port-over-edge': (v, place) => ({
    sentence: `${place.id} cuts ${millimetres(v.overM)} into a panel or past the cabinet's edge.`,
    remedy: 'Move it inwards, or make it narrower.',
  }),
  'finding.driver-over-edge': (v, place) => ({
    sentence: `${place.id} stands ${millimetres(v.overM)} over the edge of the front.`,
    remedy: 'Move it inwards, or make the front larger.',
  }),
  'finding.drivers-overlap': (v, place) => ({
    sentence: `${place.id} and ${v.other} overlap by ${millimetres(v.overlapM)}.`,
    remedy: 'Move one of them.',
  }),
  'finding.magnet-hits-back': (v, place) => ({
    sentence: `${place.id} is ${millimetres(v.depthM)} deep and there are ${millimetres(v.roomM)} from the front face to the inside of the back.`,
    remedy: 'Make the cabinet deeper, or choose a shallower driver.',
  }),
  'finding.port-too-long': (v, place) => ({
    sentence: `${place.id} is ${millimetres(v.lengthM)} long and only ${millimetres(v.roomM)} leave its inner end free (one width of air behind it; common practice, no source).`,
    remedy: 'Bend the port, make it narrower, or make the cabinet deeper.',
  }),
  'finding.chambers-overlap': (v, place) => ({
    sentence: `Chambers ${place.id} and ${v.other} share ${millimetres(v.sharedM)} of height.`,
    remedy: 'Move the top or bottom of one of them; the same air cannot belong to both.',
  }),
};
