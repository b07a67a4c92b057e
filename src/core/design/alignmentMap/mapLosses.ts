/** A loss as a quality factor and the frequency at which it holds, Hz; `atHz` null: it holds at whatever the box is tuned to. */
export interface MapLoss {
  readonly q: number;
  readonly atHz: number | null;
}

/** Leak across the chamber (QL), absorption in its air (QA), loss in the port (QP); null: none. */
export interface MapLosses {
  readonly leak: MapLoss | null;
  readonly absorption: MapLoss | null;
  readonly port: MapLoss | null;
}

/** The same as reciprocals 1/QL, 1/QA, 1/QP at the tuning of one box, 0 for none. */
export interface LossesAtTuning {
  readonly leak: number;
  readonly absorption: number;
  readonly port: number;
}

/**
 * What stated losses are at a tuning, Hz: the resistances stay where they were stated, so QL grows with the tuning and QA and QP fall.
 *
 * From R = QL/(ω0 Cab), R = 1/(ω0 Cab QA), R = 1/(ω0 Cab QP); sources as `leakResistancePaSPerM3`.
 *
 * Example: a leak of QL = 7 at 40 Hz is QL = 5.25 in a box tuned to 30 Hz.
 */
export const lossesAtTuning = (losses: MapLosses, tuningHz: number): LossesAtTuning => {
  const across = (loss: MapLoss | null): number => (loss === null ? 0 : (loss.atHz ?? tuningHz) / (tuningHz * loss.q));
  const inSeries = (loss: MapLoss | null): number =>
    loss === null ? 0 : tuningHz / ((loss.atHz ?? tuningHz) * loss.q);
  return { leak: across(losses.leak), absorption: inSeries(losses.absorption), port: inSeries(losses.port) };
};
