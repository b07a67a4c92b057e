import { type Problem, problem } from '../messages/problem.ts';
import { flatVentedAlignment } from './alignments/flatVentedAlignment.ts';
import { sealedForQtc } from './alignments/sealedAlignment.ts';

export type BoxKind = 'sealed' | 'vented' | 'passive-radiator' | 'band-pass' | 'open-baffle';

export interface Suitability {
  readonly kind: BoxKind;
  readonly verdict: 'suits' | 'possible' | 'poor';
  /** Worded like a problem: its sentence says why, with the numbers; its remedy what follows from it. */
  readonly reason: Problem;
  readonly source: string;
}

/** Efficiency bandwidth product, Hz: below the first sealed, above the second vented, both between (common practice, no source). */
export const EBP_SEALED_HZ = 50;
export const EBP_VENTED_HZ = 100;
/** A vented box beyond this many times Vas is large for what it gains (common practice, no source). */
const LARGE_OVER_VAS = 3;
/** Driver Q for which a rear chamber still gives a band worth having (common practice, no source). */
const BAND_PASS_QTS = [0.25, 0.5, 0.7] as const;
/** Driver Q from which the bass of an open baffle holds on its own, and with help (common practice, no source). */
const OPEN_QTS = [0.7, 0.5] as const;

const PRACTICE = 'common practice, no source';
const SEALED = 'R. H. Small, Closed-Box Loudspeaker Systems, 1972/73';
const VENTED = 'A. N. Thiele 1961/1971; R. H. Small 1973';

/**
 * Whether a driver suits each kind of enclosure, by its numbers alone: flat boxes where the literature has them, EBP = fs/Qes by common practice.
 *
 * Says nothing of excursion, level or taste, and nothing of a driver that a crossover keeps away from its resonance. `ql`: leak assumed
 * for the vented box. Never throws; numbers that no driver has give `poor` with the reason `suitability.unreadable`.
 *
 * Example: suitability({ fsHz: 33, qes: 0.4, qts: 0.37, vasM3: 0.057 }, 7)
 */
export const suitability = (
  driver: { readonly fsHz: number; readonly qes: number; readonly qts: number; readonly vasM3: number },
  ql: number,
): Suitability[] => {
  const readable = [...Object.values(driver), ql].every((value) => value > 0 && Number.isFinite(value));
  if (!readable) {
    const kinds: BoxKind[] = ['sealed', 'vented', 'passive-radiator', 'band-pass', 'open-baffle'];
    return kinds.map((kind) => say(kind, 'poor', 'suitability.unreadable', {}, PRACTICE));
  }
  const vented = ventedVerdict(driver, ql);
  return [
    sealedVerdict(driver),
    vented,
    {
      ...vented,
      kind: 'passive-radiator',
      reason: { ...vented.reason, values: { ...vented.reason.values, radiator: 1 } },
    },
    bandPassVerdict(driver),
    openVerdict(driver),
  ];
};

type Numbers = Parameters<typeof suitability>[0];

const say = (
  kind: BoxKind,
  verdict: Suitability['verdict'],
  code: string,
  values: Problem['values'],
  source: string,
): Suitability => ({ kind, verdict, reason: problem(code, { kind: 'driver' }, values), source });

const sealedVerdict = (driver: Numbers): Suitability => {
  const { qts, fsHz, qes } = driver;
  const ebpHz = fsHz / qes;
  const flat = sealedForQtc(driver, Math.SQRT1_2);
  if (!flat.ok) {
    const verdict = qts >= 1 ? 'poor' : 'possible';
    return say('sealed', verdict, 'suitability.sealed-high-q', { qts }, SEALED);
  }
  const { volumeM3, f3Hz } = flat.value;
  const values = { ebpHz, volumeM3, f3Hz, limitHz: EBP_VENTED_HZ };
  if (ebpHz > EBP_VENTED_HZ) return say('sealed', 'possible', 'suitability.sealed-high-ebp', values, PRACTICE);
  return say('sealed', 'suits', 'suitability.sealed-flat', values, `${SEALED}; EBP: ${PRACTICE}`);
};

const ventedVerdict = (driver: Numbers, ql: number): Suitability => {
  const { qts, fsHz, qes, vasM3 } = driver;
  const ebpHz = fsHz / qes;
  const flat = flatVentedAlignment(driver, ql);
  if (!flat.ok) {
    const { least, most } = flat.problems[0]!.values;
    return say('vented', 'poor', 'suitability.vented-none', { qts, ql, least: least ?? 0, most: most ?? 0 }, VENTED);
  }
  const { volumeM3, tuningHz, f3Hz } = flat.value;
  const values = { ebpHz, volumeM3, tuningHz, f3Hz, vasM3, limitHz: EBP_SEALED_HZ };
  if (ebpHz < EBP_SEALED_HZ) return say('vented', 'possible', 'suitability.vented-low-ebp', values, PRACTICE);
  if (volumeM3 > LARGE_OVER_VAS * vasM3) return say('vented', 'possible', 'suitability.vented-large', values, PRACTICE);
  return say('vented', 'suits', 'suitability.vented-flat', values, `${VENTED}; EBP: ${PRACTICE}`);
};

const bandPassVerdict = ({ qts }: Numbers): Suitability => {
  const [least, good, most] = BAND_PASS_QTS;
  const verdict = qts >= most ? 'poor' : qts >= least && qts <= good ? 'suits' : 'possible';
  return say('band-pass', verdict, 'suitability.band-pass', { qts, least, good, most }, PRACTICE);
};

/** Without a spring behind it the driver's own Q is the system's: |G(fs)| = QT, exact for a baffle that is large against the wavelength. */
const openVerdict = ({ qts, fsHz }: Numbers): Suitability => {
  const [good, least] = OPEN_QTS;
  const verdict = qts >= good ? 'suits' : qts >= least ? 'possible' : 'poor';
  return say('open-baffle', verdict, 'suitability.open-baffle', { qts, fsHz, levelDb: 20 * Math.log10(qts) }, PRACTICE);
};
