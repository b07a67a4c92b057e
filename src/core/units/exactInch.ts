/** Exact since the international yard and pound agreement of 1959. */
export const INCH_M = 0.0254;
export const FOOT_M = 0.3048;
export const POUND_KG = 0.45359237;
