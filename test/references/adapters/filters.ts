import { twoSourceAngle, twoSourceLobe, twoSourceSum } from '../../../src/core/acoustics/twoSourceLobe.ts';
import {
  angularFrequency,
  type BesselNormalisation,
  type FilterShape,
  firstOrderShelf,
  greatestGroupDelay,
  groupDelayOf,
  highPassPrototype,
  highPassTransfer,
  ladderElements,
  lowPassPrototype,
  lowPassTransfer,
  prototypePolynomial,
  respond,
  secondOrderAllPass,
  secondOrderLowPass,
  sumOf,
  type TransferFunction,
  unwrappedPhase,
} from '../../../src/core/circuit/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import {
  angleDeg,
  asNumber,
  asNumbers,
  asText,
  dbOfAmplitude,
  degFromRad,
  magnitude,
  radFromDeg,
  ratio,
  scaled,
} from '../convert.ts';

/** `BW3`, `LR4`: two letters for the family, then the order. */
function shapeOf(type: string): FilterShape {
  const match = /^(BW|LR)(\d+)$/.exec(type);
  if (match === null) throw new TypeError(`no such filter: ${type}`);
  return { family: match[1] === 'BW' ? 'butterworth' : 'linkwitz-riley', order: Number(match[2]) };
}

const elementsOf = (shape: FilterShape, loadOhm: number, omega: number): number[] =>
  ladderElements(prototypePolynomial(shape), loadOhm, omega).map(({ value }) => value);
const dbAt = (transfer: TransferFunction, omega: number): number | null =>
  dbOfAmplitude(magnitude(respond(transfer, omega)));

const butterworth: Adapter = {
  family: 'filt-bw',
  requires: ['order', 'Rload', 'w3dB'],
  run: ({ order, Rload, w3dB }) => ({
    elements: elementsOf({ family: 'butterworth', order: asNumber(order) }, asNumber(Rload), asNumber(w3dB)),
  }),
};
const linkwitzRiley: Adapter = {
  family: 'filt-lr',
  requires: ['order', 'Rload', 'w0'],
  run: ({ order, Rload, w0 }) => ({
    elements: elementsOf({ family: 'linkwitz-riley', order: asNumber(order) }, asNumber(Rload), asNumber(w0)),
  }),
};
const bessel: Adapter = {
  family: 'filt-bessel',
  requires: ['order', 'normalisation'],
  run: ({ order, normalisation }) => {
    const shape: FilterShape = {
      family: 'bessel',
      order: asNumber(order),
      normalisation: asText(normalisation) as BesselNormalisation,
    };
    return { elements: elementsOf(shape, 1, 1), denominator_ascending: prototypePolynomial(shape) };
  },
};

const sums: Adapter = {
  family: 'xo-sum',
  requires: ['type', 'f_over_fc_for_arrays'],
  run: ({ type, f_over_fc_for_arrays }) => {
    const shape = shapeOf(asText(type));
    const [low, high] = [lowPassPrototype(shape), highPassPrototype(shape)];
    const [same, inverted] = [sumOf(low, high), sumOf(low, high, -1)];
    const ratios = asNumbers(f_over_fc_for_arrays);
    return {
      LP_dB: dbAt(low, 1),
      HP_dB: dbAt(high, 1),
      LP_phase_deg: angleDeg(respond(low, 1)),
      sum_same_polarity_dB: dbAt(same, 1),
      sum_inverted_dB: dbAt(inverted, 1),
      sum_same_dB: ratios.map((x) => dbAt(same, x)),
      sum_inv_dB: ratios.map((x) => dbAt(inverted, x)),
    };
  },
};

const lobe = (family: string): Adapter => ({
  family,
  requires: ['type', 'spacing_over_lambda', 'tweeter', 'tweeter_polarity', 'theta_deg'],
  run: ({ type, spacing_over_lambda, tweeter, tweeter_polarity, theta_deg }) => {
    const shape = shapeOf(asText(type));
    const woofer = respond(lowPassPrototype(shape), 1);
    const highPass = highPassPrototype(shape);
    const isInverted = asText(tweeter_polarity) !== 'normal';
    const upright = respond(highPass, 1);
    const reversed = respond(sumOf({ numerator: [0], denominator: highPass.denominator }, highPass, -1), 1);
    const treble = isInverted ? reversed : upright;
    const isAbove = asText(tweeter).includes('above');
    const sources = {
      upper: isAbove ? treble : woofer,
      lower: isAbove ? woofer : treble,
      spacingWavelengths: asNumber(spacing_over_lambda),
    };
    const greatest = twoSourceLobe(sources);
    const level = (deg: number): number | null => dbOfAmplitude(magnitude(twoSourceSum(sources, radFromDeg(deg))));
    return {
      on_axis_dB: level(0),
      levels_dB: asNumbers(theta_deg).map(level),
      max_dB: dbOfAmplitude(greatest.magnitude),
      max_angle_deg: degFromRad(greatest.angleRad),
    };
  },
});

const nulls: Adapter = {
  family: 'lobe-null',
  requires: ['spacing_over_lambda'],
  run: ({ spacing_over_lambda }) => {
    const deg = (spacing: number, share: number): number | null => {
      const angle = twoSourceAngle(spacing, share);
      return angle === null ? null : degFromRad(angle);
    };
    const spacings = asNumbers(spacing_over_lambda);
    return { first_null_deg: spacings.map((d) => deg(d, 0)), minus6_deg: spacings.map((d) => deg(d, 0.5)) };
  },
};

/** The band of angular frequencies, in units of the corner, within which a peak of the delay is sought. */
const [BELOW, ABOVE] = [0.01, 100];

const sumOfFour: Adapter = {
  family: 'gd-lr4',
  requires: ['fc_Hz'],
  run: ({ fc_Hz }) => {
    const shape = shapeOf('LR4');
    const omega = angularFrequency(asNumber(fc_Hz));
    const sum = sumOf(lowPassPrototype(shape), highPassPrototype(shape));
    const inMs = (delay: number): number => scaled(ratio(delay, omega), 3);
    const peak = greatestGroupDelay(sum, BELOW, ABOVE);
    return {
      tau0_ms: inMs(groupDelayOf(sum, 0)),
      tau_max_ms: inMs(peak.delay),
      f_of_max_over_fc: peak.omega,
      tau_fc_ms: inMs(groupDelayOf(sum, 1)),
      phase_at_fc_deg: angleDeg(respond(sum, 1)),
    };
  },
};
const sumOfTwo: Adapter = {
  family: 'gd-lr2',
  requires: ['fc_Hz'],
  run: ({ fc_Hz }) => {
    const shape = shapeOf('LR2');
    const cornerHz = asNumber(fc_Hz);
    const sum = sumOf(lowPassTransfer(shape, cornerHz), highPassTransfer(shape, cornerHz), -1);
    return {
      tau0_ms: scaled(groupDelayOf(sum, 0), 3),
      tau_fc_ms: scaled(groupDelayOf(sum, angularFrequency(cornerHz)), 3),
    };
  },
};
const allPass: Adapter = {
  family: 'gd-ap2',
  requires: ['Q', 'f0_Hz', 'f_over_f0'],
  run: ({ Q, f0_Hz, f_over_f0 }) => {
    const transfer = secondOrderAllPass(asNumber(Q));
    const omega = angularFrequency(asNumber(f0_Hz));
    const points = asNumbers(f_over_f0);
    return {
      tau_ms: points.map((x) => scaled(ratio(groupDelayOf(transfer, x), omega), 3)),
      phase_deg: unwrappedPhase(transfer, points).map(degFromRad),
    };
  },
};
const lowPassPair: Adapter = {
  family: 'mp-lp2',
  requires: ['Q', 'w_over_w0'],
  run: ({ Q, w_over_w0 }) => {
    const transfer = secondOrderLowPass(asNumber(Q));
    const points = asNumbers(w_over_w0);
    return {
      ...magnitudeAndPhase(transfer, points),
      tau_w0: points.map((x) => groupDelayOf(transfer, x)),
    };
  },
};
const shelf: Adapter = {
  family: 'mp-shelf',
  requires: ['zero_w', 'pole_w', 'w'],
  run: ({ zero_w, pole_w, w }) => magnitudeAndPhase(firstOrderShelf(asNumber(zero_w), asNumber(pole_w)), asNumbers(w)),
};

function magnitudeAndPhase(transfer: TransferFunction, points: readonly number[]): { [key: string]: Json } {
  return {
    mag_dB: points.map((w) => dbAt(transfer, w)),
    phase_deg: unwrappedPhase(transfer, points).map(degFromRad),
  };
}

export const adapters: readonly Adapter[] = [
  butterworth,
  linkwitzRiley,
  bessel,
  sums,
  lobe('lobe-lr4'),
  lobe('lobe-bw3'),
  nulls,
  sumOfFour,
  sumOfTwo,
  allPass,
  lowPassPair,
  shelf,
];
