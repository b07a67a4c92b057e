import { complex, inv, matrix, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { invertInPlace, solveSymmetricInPlace } from '../../../../src/core/design/faults/complexMatrix.ts';
import { randomStream } from '../../../../src/core/math/index.ts';

const SEED = 808;

/** A random symmetric matrix whose real part is far from singular, as of a network that takes up power. */
function network(size: number, seed: number) {
  const random = randomStream(seed);
  const re = new Float64Array(size * size);
  const im = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const conductance = random.uniform();
      const susceptance = random.normal();
      for (const [a, b] of [
        [i, j],
        [j, i],
      ] as const) {
        re[a * size + b] = -conductance;
        im[a * size + b] = -susceptance;
        re[a * size + a]! += conductance;
        im[a * size + a]! += susceptance;
      }
    }
    re[i * size + i]! += 0.1 + random.uniform();
  }
  const rows = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => complex(re[i * size + j]!, im[i * size + j]!)),
  );
  return { re, im, rows: matrix(rows) };
}

describe(`small complex matrices, seed ${SEED}`, () => {
  it.each([1, 2, 3, 5, 9])('of %i rows are inverted as mathjs does it', (size) => {
    const { re, im, rows } = network(size, SEED + size);
    invertInPlace(re, im, size);
    inv(rows).forEach((value, [i, j]: number[]) => {
      const at = i! * size + j!;
      const expected = value as unknown as { re: number; im: number };
      expect(Math.hypot(re[at]! - expected.re, im[at]! - expected.im)).toBeLessThan(1e-11);
    });
  });

  it.each([1, 2, 4, 11])('of %i rows are solved: put back they give the right-hand side', (size) => {
    const { re, im, rows } = network(size, SEED - size);
    const random = randomStream(SEED);
    const right = Array.from({ length: size }, () => complex(random.normal(), random.normal()));
    const xRe = Float64Array.from(right, (z) => z.re);
    const xIm = Float64Array.from(right, (z) => z.im);
    solveSymmetricInPlace(re, im, xRe, xIm, size);
    const back = multiply(rows, matrix(Array.from(xRe, (x, k) => complex(x, xIm[k]!))));
    back.forEach((value, [k]: number[]) => {
      const got = value as unknown as { re: number; im: number };
      expect(Math.hypot(got.re - right[k!]!.re, got.im - right[k!]!.im)).toBeLessThan(1e-10);
    });
  });
});
