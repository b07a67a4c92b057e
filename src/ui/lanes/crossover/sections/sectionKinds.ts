import {
  bandPassSection,
  conjugateCoilSection,
  conjugateResonanceSection,
  type FilterShape,
  filterSection,
  lPadSection,
  type Section,
  shuntNotchSection,
  trapResistance,
  trapSection,
} from '../../../../core/circuit/synthesis/index.ts';
import type { Driver } from '../../../../core/document/schema.ts';
import type { Result } from '../../../../core/messages/problem.ts';
import type { QuantityKind } from '../../../../core/units/quantityKind.ts';
import type { Stepping } from '../../../fields/stepping.ts';
import { readDriver } from '../../driver/readDriver.ts';

/** One number that a section asks for, and where it begins for a driver. */
export interface SectionNumber {
  readonly key: string;
  readonly words: string;
  readonly kind: QuantityKind;
  readonly stepping?: Stepping;
  readonly start: (driver: Driver | null) => number;
}

/** A textbook section: what it asks for and how it is made from the answers. */
export interface SectionKind {
  readonly id: string;
  readonly words: string;
  /** Whether order and family are asked for. */
  readonly shaped: boolean;
  readonly numbers: readonly SectionNumber[];
  readonly make: (numbers: Readonly<Record<string, number>>, shape: FilterShape) => Result<Section>;
}

const ohms: Stepping = { by: 'linear', step: 0.1 };
const derived = (driver: Driver | null) => {
  const read = driver && readDriver(driver);
  return read?.ok ? read.value : null;
};
const loadStart = (driver: Driver | null) => derived(driver)?.parameters.reOhm ?? driver?.entered.reOhm ?? 8;
const load: SectionNumber = { key: 'loadOhm', words: 'load', kind: 'resistance', stepping: ohms, start: loadStart };
const cornerStart = (driver: Driver | null) => (driver?.role === 'tweeter' ? 2500 : driver?.role === 'mid' ? 400 : 800);
const corner: SectionNumber = { key: 'cornerHz', words: 'corner', kind: 'frequency', start: cornerStart };
const centre: SectionNumber = { key: 'centreHz', words: 'centre', kind: 'frequency', start: cornerStart };
const q: SectionNumber = { key: 'q', words: 'its Q', kind: 'plain', stepping: { by: 'digit' }, start: () => 2 };
const of = (numbers: Readonly<Record<string, number>>, key: string): number => numbers[key] ?? Number.NaN;

export const SECTION_KINDS: readonly SectionKind[] = [
  {
    id: 'low-pass',
    words: 'low-pass',
    shaped: true,
    numbers: [corner, load],
    make: (n, shape) => filterSection('low-pass', shape, of(n, 'cornerHz'), of(n, 'loadOhm')),
  },
  {
    id: 'high-pass',
    words: 'high-pass',
    shaped: true,
    numbers: [corner, load],
    make: (n, shape) => filterSection('high-pass', shape, of(n, 'cornerHz'), of(n, 'loadOhm')),
  },
  {
    id: 'band-pass',
    words: 'band-pass',
    shaped: true,
    numbers: [
      { key: 'lowHz', words: 'from', kind: 'frequency', start: () => 400 },
      { key: 'highHz', words: 'to', kind: 'frequency', start: () => 2500 },
      load,
    ],
    make: (n, shape) => bandPassSection(shape, of(n, 'lowHz'), of(n, 'highHz'), of(n, 'loadOhm')),
  },
  {
    id: 'l-pad',
    words: 'L-pad',
    shaped: false,
    numbers: [
      {
        key: 'attenuationDb',
        words: 'lowers by',
        kind: 'level',
        stepping: { by: 'linear', step: 0.5 },
        start: () => 3,
      },
      load,
    ],
    make: (n) => lPadSection(of(n, 'attenuationDb'), of(n, 'loadOhm'), 'at-driver'),
  },
  {
    id: 'conjugate-coil',
    words: 'conjugate network for the coil (flattens the rise of impedance)',
    shaped: false,
    numbers: [
      { key: 'reOhm', words: 'Re', kind: 'resistance', stepping: ohms, start: loadStart },
      { key: 'leH', words: 'Le', kind: 'inductance', start: (driver) => derived(driver)?.parameters.leH || 0.3e-3 },
    ],
    make: (n) => conjugateCoilSection(of(n, 'reOhm'), of(n, 'leH')),
  },
  {
    id: 'conjugate-resonance',
    words: 'conjugate network for the resonance',
    shaped: false,
    numbers: [
      { key: 'reOhm', words: 'Re', kind: 'resistance', stepping: ohms, start: loadStart },
      { key: 'fsHz', words: 'resonance', kind: 'frequency', start: (driver) => derived(driver)?.derived.fsHz ?? 800 },
      {
        key: 'qms',
        words: 'Qms',
        kind: 'plain',
        stepping: { by: 'digit' },
        start: (driver) => derived(driver)?.derived.qms ?? 2,
      },
      {
        key: 'qes',
        words: 'Qes',
        kind: 'plain',
        stepping: { by: 'digit' },
        start: (driver) => derived(driver)?.derived.qes ?? 1,
      },
    ],
    make: (n) =>
      conjugateResonanceSection({ reOhm: of(n, 'reOhm'), fsHz: of(n, 'fsHz'), qms: of(n, 'qms'), qes: of(n, 'qes') }),
  },
  {
    id: 'trap',
    words: 'trap in series',
    shaped: false,
    numbers: [
      centre,
      q,
      { key: 'depthDb', words: 'lowers by', kind: 'level', stepping: { by: 'linear', step: 0.5 }, start: () => 6 },
      load,
    ],
    make: (n) =>
      trapSection({
        centreHz: of(n, 'centreHz'),
        q: of(n, 'q'),
        ohm: trapResistance(of(n, 'depthDb'), of(n, 'loadOhm')),
      }),
  },
  {
    id: 'notch',
    words: 'notch across the driver',
    shaped: false,
    numbers: [centre, q, { key: 'ohm', words: 'resistance', kind: 'resistance', stepping: ohms, start: () => 3 }],
    make: (n) => shuntNotchSection({ centreHz: of(n, 'centreHz'), q: of(n, 'q'), ohm: of(n, 'ohm') }),
  },
];
