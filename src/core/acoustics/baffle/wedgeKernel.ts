/** π over the open angle 3π/2 of a 90-degree cabinet edge. */
const WEDGE_INDEX = 2 / 3;

/** ν/4π, the factor before the edge integral. */
export const EDGE_FACTOR = WEDGE_INDEX / (4 * Math.PI);

/** The β terms of an edge for one receiver angle, with the source on the face from which the angle counts. */
export interface WedgeTerms {
  readonly sinePlus: number;
  readonly cosinePlus: number;
  readonly sineMinus: number;
  readonly cosineMinus: number;
}

export const wedgeTerms = (receiverAngle: number): WedgeTerms => {
  const plus = WEDGE_INDEX * (Math.PI + receiverAngle);
  const minus = WEDGE_INDEX * (Math.PI - receiverAngle);
  return {
    sinePlus: Math.sin(plus),
    cosinePlus: Math.cos(plus),
    sineMinus: Math.sin(minus),
    cosineMinus: Math.cos(minus),
  };
};

/**
 * Strength B of a rigid 90-degree edge for a source on one of its faces: Σ sin νφ/(cosh νη − cos νφ) over φ = π ± θR, each twice.
 *
 * It enters as p = −(ν/4π) ∫ B exp(−jk(m + l))/(m l) dz beside the geometrical field 2 exp(−jkr)/r in front of the face and 0
 * behind it (free field exp(−jkr)/r); `coshEta` = (m l + (z − zS)(z − zR))/(rS rR), at least 1. cosh(2η/3) comes by cube roots.
 * Source: U. P. Svensson, R. I. Fred, J. Vanderkooy, "An analytic secondary source model of edge diffraction impulse responses",
 * J. Acoust. Soc. Am. 106, 1999, 2331 (form as quoted; sign and factor settled by limiting cases).
 */
export const wedgeKernel = (terms: WedgeTerms, coshEta: number): number => {
  const e = coshEta > 1 ? coshEta + Math.sqrt(coshEta * coshEta - 1) : 1;
  const root = Math.cbrt(e * e);
  const coshNuEta = (root + 1 / root) / 2;
  return 2 * (terms.sinePlus / (coshNuEta - terms.cosinePlus) + terms.sineMinus / (coshNuEta - terms.cosineMinus));
};
