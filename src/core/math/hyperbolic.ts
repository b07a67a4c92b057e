import { type Complex, divide } from './complex.ts';

/** cosh of a complex number; overflows beyond a real part of 710. */
export const hyperbolicCosine = (z: Complex): Complex => ({
  re: Math.cosh(z.re) * Math.cos(z.im),
  im: Math.sinh(z.re) * Math.sin(z.im),
});

/** sinh of a complex number, exact to rounding near 0 too; overflows beyond a real part of 710. */
export const hyperbolicSine = (z: Complex): Complex => ({
  re: Math.sinh(z.re) * Math.cos(z.im),
  im: Math.cosh(z.re) * Math.sin(z.im),
});

/** Beyond this real part tanh is ±1 to the last digit. */
const SATURATED = 20;

/**
 * tanh of a complex number: exact to rounding near 0 and without overflow far out.
 *
 * (sinh a cosh a + j sin b cos b)/(sinh² a + cos² b), the DLMF 4.35.36 form with the double angles taken apart.
 *
 * Example: hyperbolicTangent({ re: 0, im: 1 }) = j tan 1
 */
export const hyperbolicTangent = ({ re, im }: Complex): Complex => {
  if (Math.abs(re) > SATURATED) return { re: Math.sign(re), im: 0 };
  const sinh = Math.sinh(re);
  const cos = Math.cos(im);
  const square = sinh * sinh + cos * cos;
  return divide({ re: sinh * Math.cosh(re), im: Math.sin(im) * cos }, { re: square, im: 0 });
};
