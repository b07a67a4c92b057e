import {
  type FilterElement,
  type FilterShape,
  filterElements,
  firstOrderThreeWayConstants,
} from '../../../src/core/circuit/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asText, scaled } from '../convert.ts';

/** `BW3`, `LR4`: two letters for the family, then the order. */
function shapeOf(type: string): FilterShape {
  const match = /^(BW|LR)(\d+)$/.exec(type);
  if (match === null) throw new TypeError(`no such filter: ${type}`);
  return { family: match[1] === 'BW' ? 'butterworth' : 'linkwitz-riley', order: Number(match[2]) };
}

const values = (elements: readonly FilterElement[]): number[] => elements.map(({ value }) => value);
/** Coils in mH, capacitors in µF. */
const inHandyUnits = (elements: readonly FilterElement[]): number[] =>
  elements.map(({ part, value }) => scaled(value, part === 'inductor' ? 3 : 6));

const constants: Adapter = {
  family: 'xo-constants',
  requires: ['type', 'formula_units'],
  run: ({ type }) => {
    const shape = shapeOf(asText(type));
    // At 1 Hz and 1 ohm an element is its constant k.
    return {
      lowpass_k: values(filterElements('low-pass', shape, 1, 1)),
      highpass_k: values(filterElements('high-pass', shape, 1, 1)),
    };
  },
};

const numbers: Adapter = {
  family: 'xo-num',
  requires: ['type', 'f_Hz', 'R_ohm'],
  run: ({ type, f_Hz, R_ohm }) => {
    const shape = shapeOf(asText(type));
    const [cornerHz, loadOhm] = [asNumber(f_Hz), asNumber(R_ohm)];
    return {
      lowpass_mH_uF_alternating: inHandyUnits(filterElements('low-pass', shape, cornerHz, loadOhm)),
      highpass_uF_mH_alternating: inHandyUnits(filterElements('high-pass', shape, cornerHz, loadOhm)),
    };
  },
};

const firstOrder: Adapter = {
  family: 'xo-exam-1st',
  requires: ['f_Hz', 'R_ohm'],
  run: ({ f_Hz, R_ohm }) => {
    const shape = shapeOf('BW1');
    const [cornerHz, loadOhm] = [asNumber(f_Hz), asNumber(R_ohm)];
    const [coil] = inHandyUnits(filterElements('low-pass', shape, cornerHz, loadOhm));
    const [capacitor] = inHandyUnits(filterElements('high-pass', shape, cornerHz, loadOhm));
    return { L_mH: asNumber(coil), C_uF: asNumber(capacitor) };
  },
};

const threeWay: Adapter = {
  family: 'xo-apc3',
  requires: ['fH_over_fL'],
  allows: ['fM'],
  run: ({ fH_over_fL }) => {
    const k = firstOrderThreeWayConstants(asNumber(fH_over_fL));
    return {
      L1_k_RM_over_fM: k.midInductor,
      C2_k_over_RM_fM: k.midCapacitor,
      C1_k_over_RH_fH: k.highCapacitor,
      L2_k_RL_over_fL: k.lowInductor,
    };
  },
};

export const adapters: readonly Adapter[] = [constants, numbers, firstOrder, threeWay];
