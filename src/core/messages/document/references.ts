import { formatFigure } from '../formatFigure.ts';
import type { Place, ProblemValues, WordingByCode } from '../problem.ts';
import { capital, placeWords } from './subject.ts';

const mm = (value: unknown) => `${formatFigure(Number(value) * 1000)} mm`;
const where = (values: ProblemValues) =>
  values.keptState === undefined ? '' : ` in the kept state “${values.keptState}”`;
const subject = (place: Place, values: ProblemValues) => capital(placeWords(place, values)) + where(values);

/** Sentences about things of the document that do not fit together. */
export const referenceWording: WordingByCode = {
  'document.duplicate-id': (values) => ({
    sentence: `There are two ${values.what} called “${values.id}”${where(values)}.`,
    remedy: 'Give one of them another name.',
  }),
  'document.node-case': (values) => ({
    sentence: `The nodes “${values.a}” and “${values.b}” differ only in capital letters${where(values)}.`,
    remedy: 'Circuit text does not tell them apart: rename one, or write both alike where they are one.',
  }),
  'document.speaker-without-driver': (values, place) => ({
    sentence: `${subject(place, values)} names the driver “${values.driverId}”, and there is none of that name.`,
    remedy: 'Choose one of the drivers of the project, or add it.',
  }),
  'document.speaker-without-mount': (values, place) => ({
    sentence: `${subject(place, values)} has no place on the cabinet.`,
    remedy: 'Give it a place on the front.',
  }),
  'document.mount-without-speaker': (values, place) => ({
    sentence: `A place on the cabinet is kept for “${place.id}”, which is no speaker of the circuit${where(values)}.`,
    remedy: 'Take the place out, or name a speaker.',
  }),
  'document.mount-without-chamber': (values, place) => ({
    sentence: `${place.id} is set into the chamber “${values.chamberId}”, and there is none of that name${where(values)}.`,
    remedy: 'Choose one of the chambers of the cabinet, or none for a driver that is closed at its back.',
  }),
  'document.off-the-front': (values, place) => ({
    sentence: `The centre of ${place.kind === 'port' ? placeWords(place, values) : place.id} at ${mm(values.xM)} sideways and ${mm(values.yM)} up would lie outside the cabinet, ${mm(values.widthM)} wide and ${mm(values.heightM)} high${where(values)}.`,
    remedy: 'Move it inwards, or make the cabinet larger.',
  }),
  'document.port-without-chamber': (values, place) => ({
    sentence: `${subject(place, values)} opens into the chamber “${values.chamberId}”, and there is none of that name.`,
    remedy: 'Choose one of the chambers of the cabinet.',
  }),
  'document.brace-without-chamber': (values, place) => ({
    sentence: `${place.kind === 'brace' ? capital(placeWords(place, values)) : 'The crossover board'} stands in the chamber “${values.chamberId}”, and there is none of that name${where(values)}.`,
    remedy: 'Choose one of the chambers of the cabinet.',
  }),
  'document.same-chamber-twice': (values, place) => ({
    sentence: `${subject(place, values)} leads from the chamber “${values.chamberId}” into the same chamber.`,
    remedy: 'Choose another chamber for one side, or the air outside.',
  }),
  'document.open-back-in-chamber': (values, place) => ({
    sentence: `${subject(place, values)} is to have its back in the open and stands in a chamber too.`,
    remedy: 'Take it out of the chamber, or close its back.',
  }),
  'document.amplifier-without-settings': (values, place) => ({
    sentence: `The amplifier ${place.id} has no settings${where(values)}.`,
    remedy: 'Add its output resistance, cable and rated load under the same name.',
  }),
  'document.settings-without-amplifier': (values, place) => ({
    sentence: `There are settings for an amplifier “${place.id}” that the circuit does not have${where(values)}.`,
    remedy: 'Add the amplifier to the circuit, or take the settings out.',
  }),
  'document.amplifier-return': (values, place) => ({
    sentence: `The second terminal of the amplifier ${place.id} would be on node “${values.node}”${where(values)}.`,
    remedy: "An amplifier's second terminal is always the return, node “0”.",
  }),
  'document.no-amplifier': (values) => ({
    sentence: `The circuit has no amplifier${where(values)}.`,
    remedy: 'Add one between the input node and the return “0”.',
  }),
  'document.no-speaker': (values) => ({
    sentence: `The circuit has no speaker${where(values)}.`,
    remedy: 'Add at least one, for example the line “LS1 plus 0 DRIVER”.',
  }),
  'document.chamber-upside-down': (values, place) => ({
    sentence: `The upper bound of ${placeWords(place, values)} (${mm(values.topM)}) is not above its lower bound (${mm(values.bottomM)})${where(values)}.`,
    remedy: 'Raise the upper bound or lower the lower one.',
  }),
  'document.chamber-above-cabinet': (values, place) => ({
    sentence: `${subject(place, values)} reaches up to ${mm(values.topM)}, but the cabinet is ${mm(values.heightM)} high.`,
    remedy: "Lower the chamber's upper bound first, or keep the cabinet higher.",
  }),
  'document.panel-too-thick': (values) => ({
    sentence: `Two panels of ${mm(values.panelM)} leave no room inside a cabinet of ${mm(values.widthM)} × ${mm(values.heightM)} × ${mm(values.depthM)}${where(values)}.`,
    remedy: 'Use thinner panels or a larger cabinet.',
  }),
  'document.curve-missing': (values, place) => ({
    sentence: `${subject(place, values)} refers to the curve “${values.curveId}”, and there is none of that name.`,
    remedy: 'Choose one of the curves of the project, or none.',
  }),
  'document.curve-quantity': (values, place) => ({
    sentence: `${subject(place, values)} would take the curve “${values.curveId}” as ${values.wanted}, but it is ${values.quantity}.`,
    remedy: `Choose a curve of ${values.wanted}.`,
  }),
  'document.curve-owner': (values, place) => ({
    sentence: `${subject(place, values)} refers to the curve “${values.curveId}”, which belongs to something else.`,
    remedy: 'Let the curve belong to this driver first.',
  }),
  'document.curve-without-driver': (values, place) => ({
    sentence: `${subject(place, values)} belongs to the driver “${values.driverId}”, and there is none of that name.`,
    remedy: 'Let it belong to one of the drivers of the project, or to the whole speaker.',
  }),
  'document.curve-lengths': (values, place) => ({
    sentence: `${subject(place, values)} has ${values.frequencies} frequencies but ${values.others} ${values.what}.`,
    remedy: 'Every line of a curve needs each of its columns.',
  }),
  'document.curve-order': (values, place) => ({
    sentence: `The frequencies of ${placeWords(place, values)} do not rise at entry ${values.entry} (${formatFigure(Number(values.atHz))} Hz).`,
    remedy: 'Sort the curve by frequency and keep each frequency once.',
  }),
  'document.curve-level': (values, place) => ({
    sentence: `${subject(place, values)} is a response, but entry ${values.entry} is ${formatFigure(Number(values.found))} dB.`,
    remedy: 'Levels lie between −300 and 300 dB: check the column.',
  }),
  'document.curve-impedance': (values, place) => ({
    sentence: `${subject(place, values)} is an impedance, but entry ${values.entry} is ${formatFigure(Number(values.found))} Ω.`,
    remedy: 'Magnitudes of an impedance are above zero: check the column.',
  }),
};
