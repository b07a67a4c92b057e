import type { Wood } from './wood.ts';

/** An upright box of one thickness, butted, cut from boards of a usual size (2.44 m × 1.22 m, 3 mm of saw; common practice, no source). */
export const plainWood: Wood = {
  frontM: null,
  backM: null,
  leftM: null,
  rightM: null,
  topM: null,
  bottomM: null,
  joint: 'butt',
  through: 'sides',
  rebateM: 0.009,
  frontLeanDeg: 0,
  backWidthM: null,
  braces: [],
  board: null,
  stock: { lengthM: 2.44, widthM: 1.22, kerfM: 0.003, trimM: 0.005, grained: true },
};
