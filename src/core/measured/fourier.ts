/**
 * Discrete Fourier transform in place, exp(-j 2π k n / N), not scaled; the length is a power of two (throws otherwise).
 * For the inverse swap the two arrays and divide by N. Error: a few 1e-16 of the largest value.
 *
 * Source: J. W. Cooley and J. W. Tukey, Mathematics of Computation 19 (1965) 297; radix 2, from memory.
 * Example: an impulse at 0 gives 1 everywhere.
 */
export function fourierInPlace(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  if (im.length !== n || n < 1 || (n & (n - 1)) !== 0) throw new RangeError('The length is a power of two.');
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j]!, re[i]!];
      [im[i], im[j]] = [im[j]!, im[i]!];
    }
  }
  for (let width = 2; width <= n; width *= 2) {
    const half = width / 2;
    for (let k = 0; k < half; k++) {
      const angle = (-2 * Math.PI * k) / width;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      for (let i = k; i < n; i += width) {
        const j = i + half;
        const tr = re[j]! * c - im[j]! * s;
        const ti = re[j]! * s + im[j]! * c;
        re[j] = re[i]! - tr;
        im[j] = im[i]! - ti;
        re[i] = re[i]! + tr;
        im[i] = im[i]! + ti;
      }
    }
  }
}
