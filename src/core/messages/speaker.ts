import { capital, placeWords } from './document/subject.ts';
import type { WordingByCode } from './problem.ts';
import { hertz, litres, millimetres } from './shortFigures.ts';

/** Sentences of the codes that begin with `speaker.`. */
export const speakerWording: WordingByCode = {
  'speaker.no-volume-left': (v, place) => ({
    sentence: `Chamber “${v.name ?? place.id}” has no air left: ${litres(v.grossM3)} less ${litres(v.takenM3)} for drivers, ports and braces.`,
    remedy: 'Make the cabinet or the chamber larger, or take a port or brace out of it.',
  }),
  'speaker.no-inside': (v) => ({
    sentence: `Panels of ${millimetres(v.panelM)} leave no inside in a cabinet of ${millimetres(v.widthM)} × ${millimetres(v.heightM)} × ${millimetres(v.depthM)}.`,
    remedy: 'Make the cabinet larger or its panels thinner.',
  }),
  'speaker.unknown-driver': (v, place) => ({
    sentence: `${place.id} names a driver that is not in the project: ${v.driverId}.`,
    remedy: 'Choose one of the project’s drivers for it.',
  }),
  'speaker.no-mount': (_v, place) => ({
    sentence: `${place.id} has no place on the cabinet.`,
    remedy: 'Give it a place on the front.',
  }),
  'speaker.unknown-chamber': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} names a chamber that is not in the project: ${v.chamberId}.`,
    remedy: 'Choose one of the project’s chambers for it.',
  }),
  'speaker.no-amplifier': () => ({
    sentence: 'Nothing drives this network: it has no amplifier channel.',
    remedy: 'Add an amplifier channel (V1 from a node to 0) and connect the crossover to it.',
  }),
  'speaker.unknown-amplifier': (_v, place) => ({
    sentence: `Amplifier channel ${place.id} has no settings.`,
    remedy: 'State its output resistance and its rated minimum load.',
  }),
  'speaker.no-speaker': () => ({
    sentence: 'There is no driver in this network.',
    remedy: 'Add a way: choose a driver and its place on the front.',
  }),
  'speaker.listener-inside': () => ({
    sentence: 'The listening point lies inside the cabinet.',
    remedy: 'Listen from farther away, or from another angle.',
  }),
  'speaker.listener-too-near': (v) => ({
    sentence: `The listening point is only ${millimetres(v.distanceM)} from ${v.partId}.`,
    remedy: 'Listen from farther away; 0.1 m is the least.',
  }),
  'speaker.roundings-too-long': (v, place) => ({
    sentence: `The roundings of ${placeWords(place, v)} take ${millimetres(v.flaresM)} of its ${millimetres(v.lengthM)}.`,
    remedy: 'Make them smaller, or the port longer: they lie within its length.',
  }),
  'speaker.bends-too-long': (v, place) => ({
    sentence: `The bends of ${placeWords(place, v)} are longer than its ${millimetres(v.lengthM)} along the middle.`,
    remedy: 'Take bends out, or make the port longer.',
  }),
  'speaker.filling-too-dense': (v, place) => ({
    sentence: `The filling of ${placeWords(place, v)} is packed to ${kgPerM3(v.densityKgPerM3)}; beyond ${kgPerM3(v.mostKgPerM3)} it is a board, not fibre in air.`,
    remedy: `Put less in: ${Number(v.least)} to ${Number(v.most)} kg/m³ is usual.`,
  }),
  'speaker.export-free-air': () => ({
    sentence: 'The exported drivers stand in free air: the enclosure is not in the text.',
    remedy: 'Expect other impedances than here below some hundred hertz, where the enclosure acts on the drivers.',
  }),
  'speaker.export-measured': (v) => ({
    sentence: `${v.part} is exported from its data: its measured impedance is not in the text.`,
    remedy: 'Compare the two here by switching the measured curve off.',
  }),
  'speaker.export-fit': (v) => ({
    sentence: `The semi-inductance of ${v.part} is exported as ${v.sections} sections of resistor and coil, at most ${Number(v.errorPercent).toPrecision(2)} % off from ${hertz(v.lowHz)} to ${hertz(v.highHz)}.`,
    remedy: 'Stay in that band in the simulator.',
  }),
};

const kgPerM3 = (value: string | number | undefined): string => `${Math.round(Number(value))} kg/m³`;
