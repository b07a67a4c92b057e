import { capital, placeWords } from './document/subject.ts';
import { formatFigure } from './formatFigure.ts';
import type { ProblemValues, WordingByCode } from './problem.ts';
import { hertz, ohms } from './shortFigures.ts';

const figure = (value: string | number | undefined, digits = 3): string => formatFigure(Number(value), digits);

/** A fitted value in people's units, with its design value. */
function sized({ quantity, value, nominal }: ProblemValues): string {
  const inUnit = (x: string | number | undefined): string => {
    if (quantity === 'farad') return `${figure(Number(x) * 1e6)} µF`;
    if (quantity === 'henry') return `${figure(Number(x) * 1e3)} mH`;
    return `${figure(x)} Ω`;
  };
  return `about ${inUnit(value)} instead of ${inUnit(nominal)}`;
}

const LET_COOL =
  'Amplifier off and unplugged; resistors may be hot, and a large capacitor can still hold a charge: short it through a resistor first.';
const pins = (node: string | number | undefined): string => (node === '0' ? 'the return' : `point “${node}”`);

/** Sentences of the search for what is wrong with a built loudspeaker. */
export const faultsWording: WordingByCode = {
  'faults.too-few-readings': () => ({
    sentence: 'The impedance has fewer than 12 usable readings between 5 Hz and 20 kHz.',
    remedy: 'Take it again as a sweep, best from 10 Hz to 20 kHz with some 200 readings.',
  }),
  'faults.nothing-wrong': () => ({
    sentence: 'Nothing wrong found: the readings are those of the design within the tolerances of its parts.',
    remedy:
      'Nothing needs to be done. A driver connected the wrong way round does not show in an impedance; take a response for that.',
  }),
  'faults.not-explained': () => ({
    sentence:
      'Not explained: neither a healthy build nor any one or two of the faults looked for gives these readings.',
    remedy:
      'Check the measurement first (leads, calibration with a known resistor, the right channel and project), then look at the wiring with the drawing in hand.',
  }),
  'faults.reversal-invisible': (v) => ({
    sentence: `Whether ${v.drivers} is connected the wrong way round cannot be told: an impedance is the same either way.`,
    remedy:
      'Add a response of the whole loudspeaker, or watch the cone while a 1.5 V cell touches the leads for a moment.',
  }),
  'faults.part-open': (_, place) => ({
    sentence: `${place.id} seems to be open: as if it were not there.`,
    remedy: `Look at the joints of ${place.id} and pull gently at its leads. ${LET_COOL}`,
  }),
  'faults.part-short': (_, place) => ({
    sentence: `${place.id} seems to be bridged: as if a wire lay across it.`,
    remedy: `Look for solder or a lead that touches both ends of ${place.id}. Do not play until it is found: a bridge can overload the amplifier or burn out a tweeter.`,
  }),
  'faults.part-value': (v, place) => ({
    sentence: `${place.id} seems to have another value: ${sized(v)} (give or take ${figure(100 * Number(v.spread), 2)} %).`,
    remedy: `Read what is printed on ${place.id} and compare it with the parts list.`,
  }),
  'faults.part-decade': (v, place) => ({
    sentence: `${place.id} seems to be ${Number(v.factor) > 1 ? 'ten times too large' : 'ten times too small'}: a decimal point or a multiplier ring misread.`,
    remedy: `Read what is printed on ${place.id} once more, unit and multiplier included.`,
  }),
  'faults.exchanged': (v, place) => ({
    sentence: `${place.id} and ${v.other} seem to have changed places.`,
    remedy: 'Compare both with the drawing, and swap them back.',
  }),
  'faults.wrong-node': (v, place) => ({
    sentence: `One end of ${place.id} seems to be joined to ${pins(v.node)} instead of ${pins(v.from)}.`,
    remedy: `Follow that lead of ${place.id} with the drawing in hand. ${LET_COOL}`,
  }),
  'faults.link-missing': (_, place) => ({
    sentence: `The link ${place.id} seems to be missing or loose.`,
    remedy: 'Put both links back between the terminals and tighten them.',
  }),
  'faults.driver-open': (_, place) => ({
    sentence: `No current seems to flow in ${place.id}: its lead is off or its coil is broken.`,
    remedy: `Check the plugs at ${place.id}, then measure across its own tags: a healthy coil reads some ohms.`,
  }),
  'faults.driver-reversed': (_, place) => ({
    sentence: `${place.id} seems to be connected the wrong way round.`,
    remedy: `Swap the two leads of ${place.id}; watch which way its cone moves while a 1.5 V cell touches them for a moment. A tweeter’s coil takes no more than that moment.`,
  }),
  'faults.driver-resonance': (v, place) => ({
    sentence: `${place.id} seems to resonate at ${hertz(v.value)} in free air instead of ${hertz(v.nominal)}.`,
    remedy: 'Measure it out of the box: it may be stiff and new, damaged, or another model.',
  }),
  'faults.leak': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} seems to leak: a loss of Q ${figure(v.value, 2)} more than designed.`,
    remedy:
      'Feel for moving air round drivers, terminals and joints while a low note plays softly, and seal what you find.',
  }),
  'faults.port-blocked': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} seems to be blocked: the box behaves as if it were closed.`,
    remedy: 'Look into the port for filling, packing or a part that slipped before it.',
  }),
  'faults.port-length': (v, place) => ({
    sentence: `${capital(placeWords(place, v))} seems to have ${figure(v.value, 2)} times the effective length it should have.`,
    remedy: 'Measure its length and bore, and see that nothing stands close before its ends.',
  }),
  'faults.cable': (v) => ({
    sentence: `About ${ohms(v.value)} seem to lie in series with the whole loudspeaker.`,
    remedy: 'Check cable, plugs and terminals, and whether the resistance of the test leads was taken off.',
  }),
  'faults.measure-driver-unplugged': (_, place) => ({
    sentence: `Take the impedance again with a lead of ${place.id} taken off.`,
    remedy: 'Amplifier off; keep the loose lead from touching anything.',
  }),
  'faults.measure-at-driver': (_, place) => ({
    sentence: `Take the impedance at the tags of ${place.id}, nothing connected to the terminals of the box.`,
    remedy: 'Use the small signal of the measuring gear, no amplifier.',
  }),
  'faults.measure-link-off': (_, place) => ({
    sentence: `Take the link ${place.id} off and take the impedance again.`,
    remedy: 'Put the link back before playing.',
  }),
  'faults.measure-near-field': (_, place) => ({
    sentence: `Take the response of ${place.id} with the microphone close before its cone.`,
    remedy: 'Play softly, and keep the microphone a few millimetres clear of the moving cone.',
  }),
  'faults.measure-cone-direction': (_, place) => ({
    sentence: `Watch which way ${place.id} moves while a 1.5 V cell touches its leads, plus to plus, for a moment.`,
    remedy:
      'Forwards is right where the drawing has its plus towards the amplifier. No larger battery: it can break a tweeter.',
  }),
  'faults.measure-part-with-meter': (_, place) => ({
    sentence: `Lift one leg of ${place.id} and read its value with a meter.`,
    remedy: LET_COOL,
  }),
  'faults.measure-continuity': (v, place) => ({
    sentence: `See with a meter that beeps whether ${place.id} is joined to ${pins(v.node)}.`,
    remedy: LET_COOL,
  }),
};
