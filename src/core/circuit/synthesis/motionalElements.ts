/** A driver's resonance at its terminals: a parallel resistance, capacitance (mass) and inductance (compliance). */
export interface MotionalElements {
  readonly ohm: number;
  readonly farad: number;
  readonly henry: number;
}

/**
 * Motional elements behind Re of a driver with resonance fs: R = Re Qms/Qes, C = Qes/(ωs Re), L = Re/(ωs Qes).
 * Source: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", JAES 20 (5), 1972.
 * @example motionalElements({ reOhm: 6.2, fsHz: 35.8, qms: 4.5, qes: 0.54 })
 */
export function motionalElements(driver: {
  readonly reOhm: number;
  readonly fsHz: number;
  readonly qms: number;
  readonly qes: number;
}): MotionalElements {
  const { reOhm, fsHz, qms, qes } = driver;
  const omega = 2 * Math.PI * fsHz;
  return { ohm: (reOhm * qms) / qes, farad: qes / (omega * reOhm), henry: reOhm / (omega * qes) };
}
