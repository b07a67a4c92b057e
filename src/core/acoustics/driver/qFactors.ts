/** Total Q from mechanical and electrical Q. */
export const totalQ = (qms: number, qes: number): number => (qms * qes) / (qms + qes);

/** Impedance at the resonance from Re and the Qs, coil inductance left out, ohm: Re (1 + Qms/Qes). */
export const peakImpedanceOhm = (reOhm: number, qms: number, qes: number): number => reOhm * (1 + qms / qes);

/** fs/Qes, Hz. Common practice, no source: below about 50 for sealed, above about 100 for vented boxes. */
export const efficiencyBandwidthHz = (fsHz: number, qes: number): number => fsHz / qes;
