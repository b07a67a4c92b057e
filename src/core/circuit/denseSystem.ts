/** Below this, a pivot of the equilibrated matrix is rounding error and nothing else. */
const VANISHING = 1e-14;

/** A square complex system, rows one after another. */
export class DenseSystem {
  readonly rightRe: Float64Array;
  readonly rightIm: Float64Array;
  private readonly re: Float64Array;
  private readonly im: Float64Array;
  /** Sum of the magnitudes that went into each entry: what an entry could be without cancellation. */
  private readonly gross: Float64Array;
  private readonly size: number;

  constructor(size: number) {
    this.size = size;
    this.rightRe = new Float64Array(size);
    this.rightIm = new Float64Array(size);
    this.re = new Float64Array(size * size);
    this.im = new Float64Array(size * size);
    this.gross = new Float64Array(size * size);
  }

  add(i: number, j: number, re: number, im: number): void {
    const at = i * this.size + j;
    this.re[at]! += re;
    this.im[at]! += im;
    this.gross[at]! += Math.hypot(re, im);
  }

  /** Leaves the solution in the right-hand side; returns the first column without a pivot, or -1. */
  solve(): number {
    const { size: n, re, im, rightRe, rightIm } = this;
    const columnScale = this.equilibrate();
    for (let k = 0; k < n; k++) {
      let best = k;
      let greatest = -1;
      for (let r = k; r < n; r++) {
        const magnitude = Math.hypot(re[r * n + k]!, im[r * n + k]!);
        if (magnitude > greatest) {
          greatest = magnitude;
          best = r;
        }
      }
      if (!(greatest > VANISHING)) return k;
      if (best !== k) this.exchange(best, k);
      const pivotRe = re[k * n + k]! / greatest / greatest;
      const pivotIm = -im[k * n + k]! / greatest / greatest;
      for (let r = k + 1; r < n; r++) {
        const a = re[r * n + k]!;
        const b = im[r * n + k]!;
        if (a === 0 && b === 0) continue;
        const factorRe = a * pivotRe - b * pivotIm;
        const factorIm = a * pivotIm + b * pivotRe;
        for (let c = k + 1; c < n; c++) {
          const u = re[k * n + c]!;
          const v = im[k * n + c]!;
          re[r * n + c]! -= factorRe * u - factorIm * v;
          im[r * n + c]! -= factorRe * v + factorIm * u;
        }
        rightRe[r]! -= factorRe * rightRe[k]! - factorIm * rightIm[k]!;
        rightIm[r]! -= factorRe * rightIm[k]! + factorIm * rightRe[k]!;
      }
    }
    for (let k = n - 1; k >= 0; k--) {
      for (let c = k + 1; c < n; c++) {
        const u = re[k * n + c]!;
        const v = im[k * n + c]!;
        rightRe[k]! -= u * rightRe[c]! - v * rightIm[c]!;
        rightIm[k]! -= u * rightIm[c]! + v * rightRe[c]!;
      }
      const a = re[k * n + k]!;
      const b = im[k * n + k]!;
      const squared = a * a + b * b;
      const p = rightRe[k]!;
      const q = rightIm[k]!;
      rightRe[k] = (p * a + q * b) / squared;
      rightIm[k] = (q * a - p * b) / squared;
    }
    for (let k = 0; k < n; k++) {
      rightRe[k]! *= columnScale[k]!;
      rightIm[k]! *= columnScale[k]!;
    }
    return -1;
  }

  /** Scales rows, then columns, so that the greatest gross entry of each is 1; returns the columns' factors. */
  private equilibrate(): Float64Array {
    const { size: n, re, im, gross, rightRe, rightIm } = this;
    for (let i = 0; i < n; i++) {
      const greatest = Math.max(...gross.subarray(i * n, i * n + n));
      const factor = greatest > 0 ? 1 / greatest : 1;
      for (let at = i * n; at < i * n + n; at++) {
        re[at]! *= factor;
        im[at]! *= factor;
        gross[at]! *= factor;
      }
      rightRe[i]! *= factor;
      rightIm[i]! *= factor;
    }
    const columnScale = new Float64Array(n);
    for (let j = 0; j < n; j++) {
      let greatest = 0;
      for (let i = 0; i < n; i++) greatest = Math.max(greatest, gross[i * n + j]!);
      const factor = greatest > 0 ? 1 / greatest : 1;
      columnScale[j] = factor;
      for (let i = 0; i < n; i++) {
        re[i * n + j]! *= factor;
        im[i * n + j]! *= factor;
      }
    }
    return columnScale;
  }

  private exchange(r: number, k: number): void {
    const { size: n } = this;
    for (const entries of [this.re, this.im]) {
      const kept = entries.slice(r * n, r * n + n);
      entries.copyWithin(r * n, k * n, k * n + n);
      entries.set(kept, k * n);
    }
    for (const right of [this.rightRe, this.rightIm]) {
      const kept = right[r]!;
      right[r] = right[k]!;
      right[k] = kept;
    }
  }
}
