export type ResistorKindName = 'metal-film' | 'metal-oxide' | 'wire-wound';

/** Up to `flatToC` a resistor takes its whole rating; from there the rating falls straight to nothing at `zeroAtC`, °C of the air around it. */
export interface ResistorKind {
  readonly flatToC: number;
  readonly zeroAtC: number;
  /** Usual series inductance, H. */
  readonly inductanceH: number;
}

/**
 * Ratings of the resistors that crossovers are built of, all from memory: film flat to 70 °C and nothing left at 155 °C (oxide
 * 235 °C); wire-wound flat to 25 to 40 °C in many data (the lower taken here), nothing left at 275 to 350 °C (the lower taken), 1 to 10 µH.
 */
export const RESISTOR_KINDS: Readonly<Record<ResistorKindName, ResistorKind>> = {
  'metal-film': { flatToC: 70, zeroAtC: 155, inductanceH: 0 },
  'metal-oxide': { flatToC: 70, zeroAtC: 235, inductanceH: 0 },
  'wire-wound': { flatToC: 25, zeroAtC: 275, inductanceH: 5e-6 },
};

/** Air around a crossover in a closed box, °C: 60 to 80 (from memory). */
export const CROSSOVER_AIR_C = 70;
/** Rating to choose over the long-term power in a resistor: 2 to 3 (common practice, no source). */
export const RATING_OVER_POWER = 2;
