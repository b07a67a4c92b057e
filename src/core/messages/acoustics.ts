import { capital, placeWords } from './document/subject.ts';
import { formatFigure } from './formatFigure.ts';
import type { Place, ProblemValues, WordingByCode } from './problem.ts';
import { hertz } from './shortFigures.ts';

interface ShownAs {
  readonly unit: string;
  readonly perSi: number;
}

// How people read a driver's and the air's numbers: shown value = SI value times `perSi`.
const SHOWN: ReadonlyMap<string, ShownAs> = new Map([
  ['reOhm', { unit: ' Ω', perSi: 1 }],
  ['sdM2', { unit: ' cm²', perSi: 1e4 }],
  ['fsHz', { unit: ' Hz', perSi: 1 }],
  ['mmsKg', { unit: ' g', perSi: 1e3 }],
  ['blTm', { unit: ' T·m', perSi: 1 }],
  ['cmsMPerN', { unit: ' mm/N', perSi: 1e3 }],
  ['vasM3', { unit: ' L', perSi: 1e3 }],
  ['rmsKgPerS', { unit: ' kg/s', perSi: 1 }],
  ['temperatureC', { unit: ' °C', perSi: 1 }],
  ['pressurePa', { unit: ' hPa', perSi: 0.01 }],
  ['humidityFraction', { unit: ' %', perSi: 100 }],
  ['co2Fraction', { unit: ' %', perSi: 100 }],
]);
const AIR_NAMES: ReadonlyMap<string, string> = new Map([
  ['temperatureC', 'temperature'],
  ['pressurePa', 'pressure'],
  ['humidityFraction', 'humidity'],
  ['co2Fraction', 'share of carbon dioxide'],
]);

const shown = (field: string | undefined, value: string | number | undefined, digits = 3): string => {
  const { unit, perSi } = SHOWN.get(field ?? '') ?? { unit: '', perSi: 1 };
  return typeof value === 'number' ? `${formatFigure(value * perSi, digits)}${unit}` : 'no number';
};
const text = (values: ProblemValues, key: string): string => String(values[key] ?? '');
const driverName = (place: Place, { name = place.id }: ProblemValues): string =>
  name === undefined ? 'The driver' : `Driver ${name}`;

/** Sentences of the codes that begin with `acoustics.`. */
export const acousticsWording: WordingByCode = {
  'acoustics.air-out-of-range': (v, place) => {
    const name = AIR_NAMES.get(place.field ?? '') ?? 'condition';
    const range = `${shown(place.field, v.least)} to ${shown(place.field, v.most, 4)}`;
    return {
      sentence: `An air ${name} of ${shown(place.field, v.value, 4)} is outside what the formulas for air cover.`,
      remedy: `Enter ${range}.`,
    };
  },
  'acoustics.driver-incomplete': (v, place) => ({
    sentence: `${driverName(place, v)} is not fully known: ${text(v, 'missing')} cannot be worked out from what is entered.`,
    remedy:
      v.oneMoreOf === ''
        ? 'Enter Re, Sd, fs, Qes, Qms and one of Vas, Mms or Bl.'
        : `Enter one more of these: ${text(v, 'oneMoreOf')}.`,
  }),
  'acoustics.driver-impossible': (v, place) =>
    v.from === ''
      ? {
          sentence: `${driverName(place, v)} has ${text(v, 'symbol')} = ${shown(place.field, v.value)}, which no driver can have.`,
          remedy: 'Enter a number above 0.',
        }
      : {
          sentence: `${driverName(place, v)} cannot have these numbers together: ${text(v, 'from')} leave no possible ${text(v, 'symbol')}.`,
          remedy: 'Check them against the data sheet; Qts must be below both Qms and Qes.',
        },
  'acoustics.sheet-contradiction': (v, place) => ({
    sentence: `${driverName(place, v)} has ${text(v, 'symbol')} = ${shown(text(v, 'field'), v.entered)}, but ${text(v, 'used')} give ${shown(text(v, 'field'), v.derived)}; the latter is used.`,
    remedy: `Correct the one that is wrong, or clear ${text(v, 'symbol')}.`,
  }),
  'acoustics.sheet-sensitivity': (v, place) => ({
    sentence: `${driverName(place, v)} is entered with ${formatFigure(Number(v.enteredDb), 3)} dB for 2.83 V at 1 m, but its other numbers give ${formatFigure(Number(v.derivedDb), 3)} dB; the latter is used.`,
    remedy: 'Check Bl, Mms, Sd and Re; a sheet may also state the level somewhere else in the band.',
  }),
  'acoustics.no-tuning-asked': () => ({
    sentence: 'A port length needs a wished tuning and a chamber volume above zero.',
    remedy: 'State a tuning in Hz, and give the chamber some air.',
  }),
  'acoustics.port-too-wide': (v, place) => ({
    sentence: `${place.id === undefined ? 'A port' : capital(placeWords(place, v))} of this cross-section tunes the chamber to ${hertz(v.highestHz)} at most, not to ${hertz(v.tuningHz)}: its length would be below zero.`,
    remedy: widerPort(Number(v.tuningHz) / Number(v.highestHz)),
  }),
  'acoustics.no-leak-in-dip': (v) => ({
    sentence: `A dip of ${shown(undefined, v.dipOverRe)} times Re leaves no leak to find beside a Qms of ${shown(undefined, v.qms)}.`,
    remedy: 'Measure Re and the dip again, and Qms in free air; the dip must lie a little above Re.',
  }),
  'acoustics.qtc-not-above-qts': (v) => ({
    sentence: `A sealed chamber raises the Q of a driver: with Qts = ${shown(undefined, v.qts)} a Qtc of ${shown(undefined, v.qtc)} is out of reach.`,
    remedy: `Ask for a Qtc above ${shown(undefined, v.qts)}, or take a driver with a lower Qts.`,
  }),
  'acoustics.band-pass-too-low': (v) => ({
    sentence: `A band-pass box raises the Q of a driver: it would need Q = ${shown(undefined, v.qbp)} on its rear chamber, but Qts is already ${shown(undefined, v.qts)}.`,
    remedy: `Ask for a lower cut-off above ${hertz(v.leastHz)}, more gain or a lower S, or take a driver with a lower Qts.`,
  }),
  'acoustics.radiator-too-heavy': (v) => ({
    sentence: `The passive radiator tunes the chamber to ${hertz(v.highestHz)} at most, even without added mass, not to ${hertz(v.tuningHz)}.`,
    remedy: 'Take a lighter or larger radiator, more of them, a smaller chamber or a lower tuning.',
  }),
  'acoustics.no-flat-vented': (v) => {
    const [qts, ql, least, most] = [v.qts, v.ql, v.least, v.most].map((value) => shown(undefined, value));
    if (!(Number(v.most) > Number(v.least))) {
      return {
        sentence: `No flat vented box exists with a leak of QL = ${ql}.`,
        remedy: 'State a higher QL for the leak of the chamber (7 is usual; common practice, no source), or close it.',
      };
    }
    return {
      sentence: `Qts = ${qts} has no flat vented alignment with QL = ${ql}: it works from ${least} to ${most}.`,
      remedy:
        Number(v.qts) < Number(v.least)
          ? 'So low a Qts asks for a tiny box that begins octaves above the resonance: choose a driver with a higher Qts, or set volume and port by hand.'
          : `Take the port out for a sealed box, where the Qtc will lie above ${qts}, or choose a driver with a lower Qts.`,
    };
  },
};

/**
 * What reaches a tuning that is `ratio` times the highest of a port without length. There its end corrections are all the neck, so
 * the tuning goes with the fourth root of one port's cross-section, the root of their number, and one over the root of the volume.
 */
function widerPort(ratio: number): string {
  const least = (times: number) => formatFigure(Math.ceil(times * 10) / 10, 3);
  if (!(ratio > 1)) return 'Use a wider port, more of them, a smaller chamber or a lower tuning.';
  return `Use a wider port (over ${least(ratio ** 4)} times the cross-section), over ${least(ratio ** 2)} times as many of them, a chamber under ${formatFigure(Math.floor(1000 / ratio ** 2) / 10, 3)} % of its volume, or a lower tuning.`;
}
