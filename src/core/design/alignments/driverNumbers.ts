/** What an alignment needs to know of a driver: resonance (Hz), total Q, equivalent volume (m³, in the air of the box). */
export interface DriverNumbers {
  readonly fsHz: number;
  readonly qts: number;
  readonly vasM3: number;
}
