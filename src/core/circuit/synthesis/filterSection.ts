import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import type { Part } from '../part.ts';
import { filterElements } from './filterElements.ts';
import { type FilterShape, prototypePolynomial } from './filterShape.ts';
import { ladderElements } from './ladderElements.ts';
import { capacitorPart, IN, inductorPart, notPositive, OUT, type Section } from './section.ts';

const SOURCES: Readonly<Record<FilterShape['family'], string>> = {
  butterworth: 'S. Butterworth, Wireless Engineer 7, 1930; ladder after L. Weinberg, J. Franklin Inst. 264, 1957',
  'linkwitz-riley': 'S. H. Linkwitz, JAES 24 (1), 1976; ladder after L. Weinberg, J. Franklin Inst. 264, 1957',
  bessel: 'W. E. Thomson, Proc. IEE 96 (III), 1949; ladder after L. Weinberg, J. Franklin Inst. 264, 1957',
};
const HIGHEST_ORDER = 8;
const ASSUMES =
  'The load is a pure resistance at all frequencies that matter, the source has no resistance and the coils have none. ' +
  'A driver’s impedance peak and coil inductance change the slope unless they are compensated.';

/**
 * A low-pass or high-pass section for a load resistance, as ordinary parts. Butterworth is 3.01 dB down at the corner,
 * Linkwitz-Riley 6.02 dB, Bessel as its normalisation says.
 * Problems: `circuit.section-value` for values not above 0, `circuit.section-order` for an order the family does not have.
 * @example filterSection('low-pass', { family: 'butterworth', order: 3 }, 400, 8)
 */
export function filterSection(
  pass: 'low-pass' | 'high-pass',
  shape: FilterShape,
  cornerHz: number,
  loadOhm: number,
): Result<Section> {
  const problems = [...notPositive({ cornerHz, loadOhm }), ...orderProblems(shape)];
  if (problems.length > 0) return fail(...problems);
  const rail = new Rail();
  const elements = filterElements(pass, shape, cornerHz, loadOhm);
  elements.forEach(({ place, part, value }, i) => {
    const isLastSeries = !elements.slice(i + 1).some((later) => later.place === 'series');
    if (place === 'series') rail.series([[part, value]], isLastSeries);
    else rail.shunt([[part, value]]);
  });
  return succeed({ parts: rail.parts, source: SOURCES[shape.family], assumes: ASSUMES });
}

/**
 * A band-pass section between two corners, both as far down as the low-pass is at its own. Each element of the low-pass
 * for the band's width gets the one that resonates with it at the centre: in series a coil gets a capacitor, across the
 * load a capacitor gets a coil.
 * @example bandPassSection({ family: 'butterworth', order: 2 }, 400, 3000, 8)
 */
export function bandPassSection(shape: FilterShape, lowHz: number, highHz: number, loadOhm: number): Result<Section> {
  const problems = [...notPositive({ lowHz, highHz, loadOhm }), ...orderProblems(shape)];
  if (problems.length === 0 && lowHz >= highHz) {
    problems.push(problem('circuit.section-band', { kind: 'field', field: 'highHz' }, { lowHz, highHz }));
  }
  if (problems.length > 0) return fail(...problems);
  const width = 2 * Math.PI * (highHz - lowHz);
  const centreSquared = 4 * Math.PI ** 2 * lowHz * highHz;
  const rail = new Rail();
  const elements = ladderElements(prototypePolynomial(shape), loadOhm, width);
  elements.forEach(({ kind, value }, i) => {
    if (kind === 'series-inductor') {
      rail.series(
        [
          ['capacitor', 1 / (centreSquared * value)],
          ['inductor', value],
        ],
        i + 2 >= elements.length,
      );
    } else {
      rail.shunt([
        ['capacitor', value],
        ['inductor', 1 / (centreSquared * value)],
      ]);
    }
  });
  return succeed({ parts: rail.parts, source: SOURCES[shape.family], assumes: ASSUMES });
}

function orderProblems({ family, order }: FilterShape) {
  const even = family === 'linkwitz-riley';
  if (Number.isInteger(order) && order >= 1 && order <= HIGHEST_ORDER && (!even || order % 2 === 0)) return [];
  return [problem('circuit.section-order', { kind: 'field', field: 'order' }, { family, order })];
}

type Element = readonly ['inductor' | 'capacitor', number];

/** Lays elements from `@in` to `@out`, giving names and inner nodes as they come. */
class Rail {
  readonly parts: Part[] = [];
  private at = IN;
  private inner = 0;
  private readonly counts = { inductor: 0, capacitor: 0 };

  /** One behind the other along the rail, the last one to `@out` where no other follows. */
  series(elements: readonly Element[], isLast: boolean): void {
    elements.forEach((element, i) => {
      const next = isLast && i === elements.length - 1 ? OUT : `@${++this.inner}`;
      this.add(element, [this.at, next]);
      this.at = next;
    });
  }

  /** Side by side from the rail to the return. */
  shunt(elements: readonly Element[]): void {
    for (const element of elements) this.add(element, [this.at, '0']);
  }

  private add([kind, value]: Element, nodes: readonly [string, string]): void {
    const number = ++this.counts[kind];
    this.parts.push(
      kind === 'inductor' ? inductorPart(`L${number}`, nodes, value) : capacitorPart(`C${number}`, nodes, value),
    );
  }
}
