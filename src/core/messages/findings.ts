import { capital, placeWords } from './document/subject.ts';
import type { WordingByCode } from './problem.ts';
import {
  amperes,
  dayTime,
  decibels,
  degreesC,
  hertz,
  metresPerSecond,
  millimetres,
  ohms,
  volts,
  watts,
} from './shortFigures.ts';
import { suitabilityWording } from './suitability.ts';

/** Sentences of the design flaws. */
export const findingsWording: WordingByCode = {
  'finding.heavy-filling': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} is stuffed so heavily (${Math.round(Number(v.dragPaSPerM))} Pa·s/m, beyond ${v.mostPaSPerM}) that it no longer acts as one volume: its gain and tuning are only a hint.`,
    remedy: 'Put in less or lighter filling, fill a smaller share, or line the walls instead.',
  }),
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
  'finding.coil-heat': (v, place) => ({
    sentence: `The voice coil of ${place.id} would reach ${degreesC(v.temperatureC)} after long playing of music whose peaks are those of this drive (${watts(v.powerW)} on average, peaks ${decibels(v.crestDb)} above); its limit is ${degreesC(v.limitC)}.`,
    remedy:
      'Lower the drive, or let the crossover cut earlier. A coil that hot burns fingers and can char its former; let it cool before touching the driver.',
  }),
  'finding.amplifier-voltage': (v, place) => ({
    sentence: `${place.id} would have to give ${volts(v.value)} peak at ${hertz(v.atHz)} for this drive; it gives no more than ${volts(v.limit)}.`,
    remedy: 'Lower the drive, or state a stronger amplifier. A clipping amplifier can burn out a tweeter.',
  }),
  'finding.amplifier-current': (v, place) => ({
    sentence: `${place.id} would have to give ${amperes(v.value)} peak at ${hertz(v.atHz)} for this drive; it gives no more than ${amperes(v.limit)}.`,
    remedy:
      'Lower the drive, raise the impedance there, or state a stronger amplifier. Music can ask for two to three times the current of a sine (from memory).',
  }),
  'finding.hearing': (v) => ({
    sentence: `Music at this drive comes to about ${Math.round(Number(v.levelDb))} dB at the listening point; above 85 dB for long it harms hearing, and at this level ${dayTime(v.timeS)} a day is the most (from memory).`,
    remedy: 'Lower the drive, keep it short, or wear hearing protection.',
  }),
  'finding.excursion': (v, place) => ({
    sentence: `${place.id} passes its linear excursion from ${hertz(v.lowHz)} to ${hertz(v.highHz)}: ${millimetres(v.peakM)} of ${millimetres(v.limitM)} one way, peak, worst at ${hertz(v.atHz)}.`,
    remedy:
      v.behind === 'chamber'
        ? 'Lower the drive, tune the chamber lower or make it smaller, or put an active high-pass before the amplifier.'
        : 'Lower the drive, cross over higher, or put an active high-pass before the amplifier.',
  }),
  'finding.radiator-excursion': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} passes its greatest excursion from ${hertz(v.lowHz)} to ${hertz(v.highHz)}: ${millimetres(v.peakM)} of ${millimetres(v.limitM)} one way, peak, worst at ${hertz(v.atHz)}.`,
    remedy: 'Lower the drive, use a larger radiator or two of them, or put an active high-pass before the amplifier.',
  }),
  'finding.port-loud': (v, place) => ({
    sentence: `Air in ${placeWords(place, v)} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; above about ${metresPerSecond(v.guideMPerS)} a port is likely heard (a guide value, not a limit; from memory).`,
    remedy: 'Give the port more area, which also asks for more length, or lower the drive.',
  }),
  'finding.port-careful': (v, place) => ({
    sentence: `Air in ${placeWords(place, v)} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; straight edges are often heard from about ${metresPerSecond(v.guideMPerS)} (a guide value, not a limit; from memory).`,
    remedy: 'Round the ends of the port, or give it more area.',
  }),
  'finding.port-careful-rounded': (v, place) => ({
    sentence: `Air in ${placeWords(place, v)} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; even well rounded ends may be heard from about ${metresPerSecond(v.guideMPerS)} (a guide value, not a limit; from memory).`,
    remedy: 'Give the port more area, which also asks for more length, or lower the drive.',
  }),
  'finding.port-stroke': (v, place) => ({
    sentence: `Air in ${placeWords(place, v)} moves ${millimetres(v.strokeM)} one way, peak, at ${hertz(v.atHz)}, further than its ends are rounded (${millimetres(v.edgeRadiusM)}): vortices come off them (N. B. Roozen et al., 1998).`,
    remedy: 'Round the ends more, give the port more area, or lower the drive.',
  }),
  'finding.mouth-loud': (v, place) => ({
    sentence: `Air in the mouth of ${placeWords(place, v)} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; above about ${metresPerSecond(v.guideMPerS)} an opening is likely heard (a guide value, not a limit; from memory).`,
    remedy: 'Give the line more area at its end, or lower the drive.',
  }),
  'finding.mouth-careful': (v, place) => ({
    sentence: `Air in the mouth of ${placeWords(place, v)} reaches ${metresPerSecond(v.peakMPerS)} peak at ${hertz(v.atHz)}; straight edges are often heard from about ${metresPerSecond(v.guideMPerS)} (a guide value, not a limit; from memory).`,
    remedy: 'Round the edges of the mouth, or give the line more area at its end.',
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
  'finding.unsuited-box': (v, place) => {
    const reason = suitabilityWording[String(v.because)]?.(v, place);
    const box = v.kind === 'open-baffle' ? 'the open baffle' : `its ${kindWords(v.kind)} box`;
    return {
      sentence: `${place.id} is a poor match for ${box}. ${reason?.sentence ?? ''}`.trim(),
      remedy:
        v.suits === ''
          ? (reason?.remedy ?? 'Choose another driver.')
          : `Its numbers suit ${v.suits === 'open-baffle' ? 'an open baffle' : `a ${kindWords(v.suits)} box`}; keep ${v.kind === 'open-baffle' ? 'the open baffle' : 'this box'} only with another driver.`,
    };
  },
};

const kindWords = (kind: string | number | undefined): string =>
  String(kind).replace('passive-radiator', 'passive radiator');
