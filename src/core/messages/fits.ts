import type { WordingByCode } from './problem.ts';
import { hertz } from './shortFigures.ts';

const ohm = (value: string | number | undefined): string => `${Number(Number(value).toPrecision(3))} Ω`;
const percent = (value: string | number | undefined): string =>
  `${Number((100 * Number(value)).toPrecision(2))
    .toString()
    .replace('-', '−')} %`;
const COILS: ReadonlyMap<string, string> = new Map([
  ['plain', 'a plain inductance'],
  ['semi', 'a semi-inductance'],
  ['both', 'an inductance with a semi-inductance'],
  ['shunted', 'an inductance with a second one across a resistance'],
]);
const coil = (value: string | number | undefined): string => COILS.get(String(value)) ?? 'another coil';
const LOSSES: ReadonlyMap<string, string> = new Map([
  ['leak', 'leak'],
  ['absorption', 'absorption inside'],
  ['port', 'loss in the port'],
]);
const QUANTITIES: ReadonlyMap<string, string> = new Map([
  ['fsHz', 'fs'],
  ['qms', 'Qms'],
  ['qes', 'Qes'],
  ['reOhm', 'Re'],
]);

/** Sentences of the codes that begin with `fits.`: values found from measured impedances. */
export const fitsWording: WordingByCode = {
  'fits.few-points': (v) => ({
    sentence: `The sweep has ${v.count} points; a fit needs ${v.needed} or more.`,
    remedy: 'Measure more points, densest round the resonance.',
  }),
  'fits.no-peak': (v) => ({
    sentence: `No resonance peak stands out between ${hertz(v.fromHz)} and ${hertz(v.toHz)}.`,
    remedy: 'Extend the sweep until the impedance falls on both sides of its peak.',
  }),
  'fits.one-peak': (v) => ({
    sentence: `A vented box shows two peaks; between ${hertz(v.fromHz)} and ${hertz(v.toHz)} only one stands out.`,
    remedy: 'Extend the sweep downwards, or look whether the port is closed or the box leaks badly.',
  }),
  'fits.not-determined': () => ({
    sentence: 'The sweep does not fix the values: several sets of them fit it equally well.',
    remedy: 'Measure over a wider band and with more points round the peak.',
  }),
  'fits.sweep-coarse': (v) => ({
    sentence: `Only ${v.count} points lie in the resonance peak, so its height and width are uncertain.`,
    remedy: `Measure with at least ${v.needed} points in the peak.`,
  }),
  'fits.peak-at-edge': (v) => ({
    sentence: `The resonance at ${hertz(v.fsHz)} lies near an end of the sweep from ${hertz(v.fromHz)} to ${hertz(v.toHz)}.`,
    remedy: 'Measure from below two thirds of the resonance to above four times it.',
  }),
  'fits.leads-suspected': (v) => ({
    sentence: `The sweep gives Re = ${ohm(v.fittedOhm)}, the ohmmeter ${ohm(v.dcOhm)}: the difference may be leads, contacts or a warm coil.`,
    remedy: 'Short the leads at the driver, measure them, and give their resistance.',
  }),
  'fits.leads-unknown': (v) => ({
    sentence: `The resistance of the leads is not known and is counted into Re = ${ohm(v.fittedOhm)}.`,
    remedy: 'Short the leads at the driver, measure them, and give their resistance.',
  }),
  'fits.coil-equivalent': (v) => ({
    sentence: `The coil does not behave like ${coil(v.form)}, but more like ${coil(v.better)}; its values here only stand in for it; resonance and Re come from the better form.`,
    remedy: 'Choose the better form where it can be entered, or trust the coil values only in the middle of the sweep.',
  }),
  'fits.model-misfit': (v) => ({
    sentence:
      v.narrowed === 1
        ? `No model of the coil fits the whole sweep; resonance and Re come from the part up to ${hertz(v.toHz)}.`
        : 'The model does not fit the sweep within its noise; the stated uncertainties have been widened.',
    remedy: 'Look at what is left between sweep and model: a step, hum or a rattle shows there.',
  }),
  'fits.level-dependent': (v) => ({
    sentence: `${QUANTITIES.get(String(v.quantity)) ?? 'A value'} changes by ${percent(v.change)} between the two drive levels.`,
    remedy: 'Use the sweep at the lower level, and measure at still lower ones until the values stay.',
  }),
  'fits.added-too-little': (v) => ({
    sentence: `The second sweep moves the resonance by only ${percent(v.shift)}, which leaves Vas uncertain.`,
    remedy: 'Use more mass (about that of the cone), or a smaller box.',
  }),
  'fits.wrong-way': (v) => ({
    sentence: `The resonance goes from ${hertz(v.freeHz)} to ${hertz(v.secondHz)}: added mass lowers it, a closed box raises it.`,
    remedy: 'Look whether the two sweeps have been exchanged.',
  }),
  'fits.driver-moved': (v) => ({
    sentence: `In the box the driver seems to have a moving mass that differs by ${percent(v.change)} from its own in free air.`,
    remedy: 'Measure the driver again in free air, run in, at the same drive level.',
  }),
  'fits.loss-unusual': (v) => ({
    sentence: `The ${LOSSES.get(String(v.loss)) ?? 'loss'} has Q = ${Number(Number(v.q).toPrecision(2))}; common practice (no source) expects above ${v.usual}.`,
    remedy:
      v.loss === 'leak'
        ? 'Look for leaks: terminals, joints, the driver’s gasket, its dust cap.'
        : v.loss === 'port'
          ? 'Look into the port: filling before its mouth, sharp edges, a grille.'
          : 'Look at the filling: without any, suspect soft or thin panels.',
  }),
  'fits.losses-mixed': () => ({
    sentence: 'The sweep fixes the total loss of the box, but not how it divides into leak, absorption and port.',
    remedy: 'Measure once more with the port closed, or with a leak made on purpose.',
  }),
};
