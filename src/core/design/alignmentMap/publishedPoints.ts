import { type Problem, problem } from '../../messages/problem.ts';
import type { DriverNumbers } from '../alignments/driverNumbers.ts';
import { sealedForQtc } from '../alignments/sealedAlignment.ts';
import type { VentedAlignment } from '../alignments/ventedAlignment.ts';
import { ventedB4 } from '../alignments/ventedB4.ts';
import { ventedBb4 } from '../alignments/ventedBb4.ts';
import { ventedBessel } from '../alignments/ventedBessel.ts';
import { ventedC4 } from '../alignments/ventedC4.ts';
import { ventedQb3 } from '../alignments/ventedQb3.ts';
import { ventedFigures } from './ventedFigures.ts';

export type PublishedFamily = 'B2' | 'C2' | 'BL2' | 'Qtc' | 'B4' | 'QB3' | 'C4' | 'SC4' | 'BL4' | 'BB4' | 'SBB4';

/** A box of the literature for one driver. */
export interface PublishedPoint {
  readonly family: PublishedFamily;
  /** Set for sealed boxes. */
  readonly qtc: number | null;
  /** Apparent volume. */
  readonly volumeM3: number;
  /** null: sealed. */
  readonly tuningHz: number | null;
  readonly f3Hz: number;
  /** Highest less lowest level of what swings in the band, dB; 0 for the flat ones. */
  readonly rippleDb: number;
  readonly source: string;
}

/** A family that has no box for this driver, with the reason. */
export interface AbsentFamily {
  readonly family: PublishedFamily;
  readonly reason: Problem;
}

export interface PublishedPoints {
  readonly points: readonly PublishedPoint[];
  readonly absent: readonly AbsentFamily[];
}

const SMALL_SEALED = 'R. H. Small, Closed-Box Loudspeaker Systems, 1972/73';
const THIELE = 'A. N. Thiele, Loudspeakers in Vented Boxes, 1961/1971';
const HOGE = 'W. J. J. Hoge, 1978 (definition from memory)';
const SOURCES: Readonly<Record<PublishedFamily, string>> = {
  B2: SMALL_SEALED,
  C2: SMALL_SEALED,
  BL2: SMALL_SEALED,
  Qtc: SMALL_SEALED,
  B4: `${THIELE}; R. H. Small 1973`,
  QB3: `${THIELE}; R. H. Small 1973`,
  C4: `${THIELE}; R. H. Small 1973`,
  SC4: 'as C4, pole factor above 1 (from memory)',
  BL4: 'W. E. Thomson 1949 for the polynomial (use from memory)',
  BB4: HOGE,
  SBB4: HOGE,
};

/** Ripple of the second-order Chebyshev box that is marked, dB: as far as "flat" is stretched elsewhere. */
const C2_RIPPLE_DB = 0.5;
/** B4 and Bessel each suit one driver Q: a driver this close counts, since sheets and samples differ by more (common practice, no source). */
const NEAR_QTS = 0.02;
/** Drivers outside have no sensible box, and the searches are not asked for them. */
const LEAST_QTS = 0.05;
const MOST_QTS = 3;
/** Below, QB3 and B4 have no solution for part of the drivers. */
const LEAST_QL = 1.4;
/** No vented box larger than ten times Vas, as in `flatVentedAlignment`. */
const LEAST_ALPHA = 0.1;

/**
 * The boxes that the literature offers a driver, and for each family that has none the reason.
 *
 * Sealed: Butterworth (Qtc 0.7071), Chebyshev of 0.5 dB, Bessel (0.5774) and each of `wishedQtcs`, lossless. Vented, with a leak QL at the
 * tuning (null: none): B4 and Bessel where QT is within 2 % of the one they ask for, and then with the cut-off and ripple of the driver's own
 * QT; QB3 below B4's QT, C4 above, SC4 (sub-Chebyshev) below; Hoge's box tuned to fs, called SBB4 below B4's QT and BB4 above (names from memory).
 * `qts` includes what is in series with the coil. Never throws: numbers that no driver has give no points and the Problem
 * `design.alignment-unreadable` for each family.
 *
 * Example: publishedPoints({ driver: { fsHz: 33, qts: 0.367, vasM3: 0.057 }, ql: 7, wishedQtcs: [1] })
 */
export const publishedPoints = (input: {
  readonly driver: DriverNumbers;
  readonly ql: number | null;
  readonly wishedQtcs: readonly number[];
}): PublishedPoints => {
  const points: PublishedPoint[] = [];
  const absent: AbsentFamily[] = [];
  for (const { family, found } of [...sealed(input), ...vented(input)]) {
    if ('code' in found) absent.push({ family, reason: found });
    else points.push({ family, ...found, source: SOURCES[family] });
  }
  return { points, absent };
};

type Found = Omit<PublishedPoint, 'family' | 'source'> | Problem;
interface Tried {
  readonly family: PublishedFamily;
  readonly found: Found;
}

const missing = (code: string, values: Problem['values']): Problem => problem(code, { kind: 'driver' }, values);
const readable = ({ fsHz, qts, vasM3 }: DriverNumbers): boolean =>
  fsHz > 0 && Number.isFinite(fsHz) && vasM3 > 0 && Number.isFinite(vasM3) && qts >= LEAST_QTS && qts <= MOST_QTS;
const unreadable = (family: PublishedFamily, { qts }: DriverNumbers): Problem =>
  missing('design.alignment-unreadable', {
    family,
    least: LEAST_QTS,
    most: MOST_QTS,
    qts: Number.isFinite(qts) ? qts : '',
  });
const finite = (found: Found, family: PublishedFamily, driver: DriverNumbers): Found =>
  'code' in found ||
  [found.volumeM3, found.f3Hz, found.rippleDb, found.tuningHz ?? 0].every((value) => Number.isFinite(value))
    ? found
    : unreadable(family, driver);

/** Qtc of a second-order high-pass with this peak, from peak = Qtc²/√(Qtc² − ¼). */
const qtcOfPeak = (peakDb: number): number => {
  const square = 10 ** (peakDb / 10);
  return Math.sqrt((square + Math.sqrt(square * square - square)) / 2);
};

const sealed = ({
  driver,
  wishedQtcs,
}: {
  readonly driver: DriverNumbers;
  readonly wishedQtcs: readonly number[];
}): Tried[] => {
  const wishes: [PublishedFamily, number][] = [
    ['BL2', 1 / Math.sqrt(3)],
    ['B2', Math.SQRT1_2],
    ['C2', qtcOfPeak(C2_RIPPLE_DB)],
    ...wishedQtcs.map((qtc): [PublishedFamily, number] => ['Qtc', qtc]),
  ];
  return wishes.map(([family, qtc]) => {
    if (!readable(driver) || !(qtc > 0 && Number.isFinite(qtc))) return { family, found: unreadable(family, driver) };
    const box = sealedForQtc(driver, qtc);
    if (!box.ok) return { family, found: box.problems[0]! };
    const { volumeM3, f3Hz, response } = box.value;
    const found = { qtc, volumeM3, tuningHz: null, f3Hz, rippleDb: 20 * Math.log10(response.peakRatio) };
    return { family, found: finite(found, family, driver) };
  });
};

const vented = ({ driver, ql }: { readonly driver: DriverNumbers; readonly ql: number | null }): Tried[] => {
  const { qts } = driver;
  const families: PublishedFamily[] = ['QB3', 'B4', 'C4', 'SC4', 'BL4', 'BB4', 'SBB4'];
  const b4 = ql === null || ql >= LEAST_QL ? ventedB4(ql) : null;
  return families.map((family): Tried => {
    if (!readable(driver) || (ql !== null && !(ql > 0))) return { family, found: unreadable(family, driver) };
    if (b4 === null) return { family, found: missing('design.alignment-leak', { family, ql: ql ?? '' }) };
    const found = boxOf(family, qts, ql, b4);
    if ('code' in found) return { family, found };
    if (found.alpha < LEAST_ALPHA) return { family, found: missing('design.alignment-too-large', { family, qts }) };
    return { family, found: finite(inNumbers(found, driver, ql), family, driver) };
  });
};

const boxOf = (
  family: PublishedFamily,
  qts: number,
  ql: number | null,
  b4: VentedAlignment,
): VentedAlignment | Problem => {
  const values = { family, qts, limit: b4.qt, ql: ql ?? 'none' };
  const onlyBelow = (): Problem => missing('design.alignment-below', values);
  const onlyAbove = (): Problem => missing('design.alignment-above', values);
  const leak = (): Problem => missing('design.alignment-leak', values);
  const oneQ = (box: VentedAlignment | null): VentedAlignment | Problem => {
    if (box === null) return leak();
    const near = Math.abs(qts / box.qt - 1) <= NEAR_QTS;
    return near ? box : missing('design.alignment-one-q', { ...values, limit: box.qt });
  };
  switch (family) {
    case 'B4':
      return oneQ(b4);
    case 'BL4':
      return oneQ(ventedBessel(ql));
    case 'QB3':
      return qts < b4.qt ? ventedQb3(qts, ql) : onlyBelow();
    case 'C4':
      return qts > b4.qt ? (ventedC4(qts, ql) ?? missing('design.alignment-too-high', values)) : onlyAbove();
    case 'SC4':
      return qts < b4.qt ? (ventedC4(qts, ql) ?? missing('design.alignment-too-low', values)) : onlyBelow();
    case 'BB4':
    case 'SBB4': {
      if (family === 'SBB4' && qts >= b4.qt) return onlyBelow();
      if (family === 'BB4' && qts < b4.qt) return onlyAbove();
      return ventedBb4(qts, ql);
    }
    default:
      throw new RangeError(`${family} is no vented box`);
  }
};

/** In plain numbers, with cut-off and ripple as the map shows them at this point. */
const inNumbers = (box: VentedAlignment, driver: DriverNumbers, ql: number | null): Found => {
  const figures = ventedFigures(
    { h: box.h, alpha: box.alpha, qt: driver.qts, losses: { leak: ql === null ? 0 : 1 / ql, absorption: 0, port: 0 } },
    1,
  );
  const tuningHz = box.h * driver.fsHz;
  return {
    qtc: null,
    volumeM3: driver.vasM3 / box.alpha,
    tuningHz,
    f3Hz: figures === null ? Number.NaN : figures.cutOffOverTuning * tuningHz,
    rippleDb: figures === null ? Number.NaN : figures.rippleDb,
  };
};
