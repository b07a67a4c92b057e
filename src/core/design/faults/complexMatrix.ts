// Kernels for small dense complex matrices, rows one after another in split arrays. Nothing is checked and no rows are exchanged: all
// of these matrices are admittances or impedances of passive networks, of which every pivot has a real part that is not negative.

/** Turns an n by n matrix into its inverse, in place (Gauss and Jordan). */
export function invertInPlace(re: Float64Array, im: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const kk = k * n + k;
    const a = re[kk]!;
    const b = im[kk]!;
    const squared = a * a + b * b;
    const pr = a / squared;
    const pi = -b / squared;
    for (let j = 0; j < n; j++) {
      if (j === k) continue;
      const kj = k * n + j;
      const x = re[kj]!;
      const y = im[kj]!;
      re[kj] = x * pr - y * pi;
      im[kj] = x * pi + y * pr;
    }
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const ik = i * n + k;
      const fr = re[ik]!;
      const fi = im[ik]!;
      if (fr === 0 && fi === 0) continue;
      for (let j = 0; j < n; j++) {
        if (j === k) continue;
        const x = re[k * n + j]!;
        const y = im[k * n + j]!;
        re[i * n + j]! -= fr * x - fi * y;
        im[i * n + j]! -= fr * y + fi * x;
      }
      re[ik] = -(fr * pr - fi * pi);
      im[ik] = -(fr * pi + fi * pr);
    }
    re[kk] = pr;
    im[kk] = pi;
  }
}

/** Solves a symmetric n by n system whose upper half is given, which is lost; the right-hand side becomes the solution. */
export function solveSymmetricInPlace(
  re: Float64Array,
  im: Float64Array,
  xRe: Float64Array,
  xIm: Float64Array,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const row = k * n;
    const a = re[row + k]!;
    const b = im[row + k]!;
    const squared = a * a + b * b;
    const pr = a / squared;
    const pi = -b / squared;
    re[row + k] = pr;
    im[row + k] = pi;
    const rr = xRe[k]!;
    const ri = xIm[k]!;
    const isDriven = rr !== 0 || ri !== 0;
    for (let i = k + 1; i < n; i++) {
      const yr = re[row + i]!;
      const yi = im[row + i]!;
      if (yr === 0 && yi === 0) continue;
      const fr = yr * pr - yi * pi;
      const fi = yr * pi + yi * pr;
      const target = i * n;
      for (let j = i; j < n; j++) {
        const x = re[row + j]!;
        const y = im[row + j]!;
        re[target + j]! -= fr * x - fi * y;
        im[target + j]! -= fr * y + fi * x;
      }
      if (!isDriven) continue;
      xRe[i]! -= fr * rr - fi * ri;
      xIm[i]! -= fr * ri + fi * rr;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    const row = k * n;
    let sr = xRe[k]!;
    let si = xIm[k]!;
    for (let j = k + 1; j < n; j++) {
      const yr = re[row + j]!;
      const yi = im[row + j]!;
      sr -= yr * xRe[j]! - yi * xIm[j]!;
      si -= yr * xIm[j]! + yi * xRe[j]!;
    }
    const pr = re[row + k]!;
    const pi = im[row + k]!;
    xRe[k] = sr * pr - si * pi;
    xIm[k] = sr * pi + si * pr;
  }
}
