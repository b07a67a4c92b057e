/** A complex number as plain data. Hot loops keep real and imaginary parts in split arrays instead. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const scale = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });
export const conjugate = (a: Complex): Complex => ({ re: a.re, im: -a.im });
export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);
/** Radians, -π to π. */
export const phase = (a: Complex): number => Math.atan2(a.im, a.re);

/** Scaled against overflow (R. L. Smith, Algorithm 116, CACM 5, 1962, from memory). Division by zero gives non-finite parts. */
export const divide = (a: Complex, b: Complex): Complex => {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const r = b.im / b.re;
    const d = b.re + b.im * r;
    return { re: (a.re + a.im * r) / d, im: (a.im - a.re * r) / d };
  }
  const r = b.re / b.im;
  const d = b.re * r + b.im;
  return { re: (a.re * r + a.im) / d, im: (a.im * r - a.re) / d };
};

export const reciprocal = (a: Complex): Complex => divide({ re: 1, im: 0 }, a);

/** Principal root: real part never negative. */
export const squareRoot = (a: Complex): Complex => {
  const m = magnitude(a);
  if (m === 0) return { re: 0, im: 0 };
  const larger = Math.sqrt((m + Math.abs(a.re)) / 2);
  const smaller = Math.abs(a.im) / (2 * larger);
  const sign = a.im < 0 ? -1 : 1;
  return a.re >= 0 ? { re: larger, im: sign * smaller } : { re: smaller, im: sign * larger };
};

export const exponential = (a: Complex): Complex => {
  const m = Math.exp(a.re);
  return { re: m * Math.cos(a.im), im: m * Math.sin(a.im) };
};
