/** Loss of a dielectric at a frequency: tan δ between `least` and `most` in good and poor makes, `usual` to begin with. */
export interface LossPoint {
  readonly hz: number;
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

export type CapacitorKindName = 'polypropylene' | 'polyester' | 'paper' | 'smooth-electrolytic' | 'rough-electrolytic';

export interface CapacitorKind {
  readonly losses: readonly LossPoint[];
  /** Usual symmetrical tolerance, a ratio (from memory). */
  readonly usualTolerance: number;
  readonly electrolytic: boolean;
  /** How sure the losses are. */
  readonly source: 'looked up' | 'from memory';
}

const film = (hz: number, least: number, usual: number, most: number): LossPoint => ({ hz, least, usual, most });

/**
 * Losses of the capacitors that crossovers are built of.
 *
 * Polypropylene and polyester: a film-capacitor maker's data page (looked up), with the five-fold spread on polypropylene and the
 * spread on polyester that other data pages show at 1 kHz (from memory). Paper and bipolar electrolytics with rough and smooth foil:
 * from memory, 1 kHz alone; electrolytics rise with frequency, which is not in here.
 */
export const CAPACITOR_KINDS: Readonly<Record<CapacitorKindName, CapacitorKind>> = {
  polypropylene: {
    losses: [film(1e3, 1e-4, 1e-4, 5e-4), film(1e4, 2e-4, 2e-4, 1e-3), film(1e5, 2e-4, 2e-4, 1e-3)],
    usualTolerance: 0.05,
    electrolytic: false,
    source: 'looked up',
  },
  polyester: {
    losses: [film(1e3, 5e-3, 5e-3, 8e-3), film(1e4, 1.1e-2, 1.1e-2, 1.76e-2), film(1e5, 1.7e-2, 1.7e-2, 2.7e-2)],
    usualTolerance: 0.1,
    electrolytic: false,
    source: 'looked up',
  },
  paper: {
    losses: [film(1e3, 5e-3, 7e-3, 1e-2)],
    usualTolerance: 0.1,
    electrolytic: false,
    source: 'from memory',
  },
  'smooth-electrolytic': {
    losses: [film(1e3, 0.015, 0.025, 0.04)],
    usualTolerance: 0.1,
    electrolytic: true,
    source: 'from memory',
  },
  'rough-electrolytic': {
    losses: [film(1e3, 0.03, 0.06, 0.1)],
    usualTolerance: 0.2,
    electrolytic: true,
    source: 'from memory',
  },
};

/** Leads and end contacts, ohm: 5 to 20 mΩ (from memory). */
export const CAPACITOR_LEADS_OHM = 0.01;
