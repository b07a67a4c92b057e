import { describe, expect, it } from 'vitest';
import { closestChoices } from '../../../../src/core/design/optimise/closestChoices.ts';
import {
  lowerTriangle,
  normalEquations,
  solveTriangles,
} from '../../../../src/core/design/optimise/normalEquations.ts';
import { roundedValues } from '../../../../src/core/design/optimise/preferredChoices.ts';
import { randomStream } from '../../../../src/core/math/randomStream.ts';

/** A quadratic of `size` variables that hang together, and an optimum between the choices. */
function puzzle(seed: number, size: number) {
  const random = randomStream(seed);
  const columns = Array.from({ length: size }, () => Float64Array.from({ length: size + 2 }, () => random.normal()));
  // One column nearly in the plane of two others: the quadratic is a long valley.
  columns[0] = columns[1]!.map((x, k) => x + 0.7 * columns[2]![k]! + 0.05 * random.normal());
  const { matrix } = normalEquations(columns, new Float64Array(size + 2));
  const choices = Array.from({ length: size }, () => Float64Array.of(6.8, 8.2, 10, 12, 15));
  const optimum = Float64Array.from({ length: size }, () => 8 + 5 * random.uniform());
  return { matrix, choices, optimum };
}

const quadratic = (matrix: readonly Float64Array[], optimum: Float64Array, values: Float64Array): number => {
  const x = values.map((value, i) => Math.log(value / optimum[i]!));
  return x.reduce((sum, a, i) => sum + a * matrix[i]!.reduce((row, m, j) => row + m * x[j]!, 0), 0);
};

const allSets = (choices: readonly Float64Array[]): Float64Array[] =>
  choices.reduce<Float64Array[]>(
    (sets, list) => sets.flatMap((set) => Array.from(list, (value) => Float64Array.of(...set, value))),
    [new Float64Array(0)],
  );

describe('closestChoices', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('finds the best sets of all 3125, in order (seed %d)', (seed) => {
    const { matrix, choices, optimum } = puzzle(seed, 5);
    const near = choices.map((list, i) => list.filter((x) => Math.abs(Math.log(x / optimum[i]!)) <= Math.log(1.7)));
    const ranked = allSets(near)
      .map((values) => quadratic(matrix, optimum, values))
      .sort((a, b) => a - b);
    const found = closestChoices(matrix, optimum, choices, 6).map((values) => quadratic(matrix, optimum, values));
    expect(found).toHaveLength(6);
    // The little weight that keeps flat directions in hand is a millionth of the mean.
    found.forEach((value, k) => {
      expect(Math.abs(value - ranked[k]!)).toBeLessThan(1e-5);
    });
    expect(found[0]).toBeLessThanOrEqual(quadratic(matrix, optimum, roundedValues(optimum, choices)) + 1e-12);
  });

  it('lets parts of any value follow the chosen ones', () => {
    const { matrix, choices, optimum } = puzzle(9, 4);
    const some = choices.map((list, i) => (i === 1 ? null : list));
    const [first] = closestChoices(matrix, optimum, some, 1);
    for (const factor of [0.999, 1.001]) {
      const moved = first!.map((value, i) => (i === 1 ? value * factor : value));
      expect(quadratic(matrix, optimum, moved)).toBeGreaterThan(quadratic(matrix, optimum, first!) - 1e-9);
    }
    // No set of the others is better with the free one where it is best.
    const best = Math.min(
      ...allSets([choices[0]!, choices[2]!, choices[3]!]).flatMap((set) => {
        let least = Number.POSITIVE_INFINITY;
        for (let x = -1; x <= 1; x += 0.002) {
          const values = Float64Array.of(set[0]!, optimum[1]! * Math.exp(x), set[1]!, set[2]!);
          least = Math.min(least, quadratic(matrix, optimum, values));
        }
        return least;
      }),
    );
    expect(quadratic(matrix, optimum, first!)).toBeLessThan(best + 1e-3);
  });
});

describe('normalEquations', () => {
  it('solves a system that is known (seed 12)', () => {
    const random = randomStream(12);
    const columns = Array.from({ length: 4 }, () => Float64Array.from({ length: 7 }, () => random.normal()));
    const x = Float64Array.of(1, -2, 0.5, 3);
    const residuals = Float64Array.from({ length: 7 }, (_, k) =>
      columns.reduce((sum, column, i) => sum + column[k]! * x[i]!, 0),
    );
    const { matrix, right } = normalEquations(columns, residuals);
    const answer = solveTriangles(lowerTriangle(matrix)!, right);
    answer.forEach((value, i) => {
      expect(value).toBeCloseTo(x[i]!, 10);
    });
    expect(lowerTriangle([Float64Array.of(1, 2), Float64Array.of(2, 1)])).toBeNull();
  });
});
