/** Where a threshold comes from. */
export type ThresholdMark = 'published' | 'practice, from memory' | 'ours';

export interface PortThreshold {
  readonly value: number;
  readonly mark: ThresholdMark;
  readonly source: string;
}

const LAYER = 'P. Blondeaux, G. Vittori, J. Fluid Mech. 2021 (oscillating boundary layer)';
const PRACTICE = 'common practice, no source';

/**
 * Where the air in a port begins to be heard, as published and as practised; peak speeds in m/s. Nobody agrees on one number.
 *
 * Layer Reynolds numbers: first instability, rapid growth of turbulence, turbulence through the whole cycle. Strokes: the air's
 * one-way peak motion over the radius of the mouth's edge. Speeds: straight and generously flared ends.
 */
export const PORT_THRESHOLDS = {
  layerInstability: { value: 85, mark: 'published', source: LAYER },
  layerGrowth: { value: 200, mark: 'published', source: LAYER },
  layerTurbulence: { value: 850, mark: 'published', source: LAYER },
  /** Vortices begin to shed where the stroke reaches the edge's radius. */
  shedding: {
    value: 1,
    mark: 'published',
    source:
      'N. B. Roozen et al., "Vortical sound in bass-reflex ports of loudspeakers", J. Acoust. Soc. Am. 104, 1998, 1914',
  },
  strokeCaution: { value: 0.5, mark: 'practice, from memory', source: PRACTICE },
  straightCautionMPerS: { value: 10, mark: 'practice, from memory', source: PRACTICE },
  flaredCautionMPerS: { value: 15, mark: 'practice, from memory', source: PRACTICE },
  flaredCeilingMPerS: { value: 20, mark: 'practice, from memory', source: PRACTICE },
  machCeiling: {
    value: 0.05,
    mark: 'practice, from memory',
    source: 'R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part IV',
  },
} as const satisfies Readonly<Record<string, PortThreshold>>;

/** What rounded ends are reported to gain, dB, at levels before the noise takes over. */
export const FLARE_GAINS = [
  {
    what: 'rounded ends that open gently by about 6 degrees, against sharp ones: less vortex noise',
    leastDb: 8,
    mostDb: 8,
    mark: 'published',
    source: 'N. B. Roozen et al., 1998',
  },
  {
    what: 'the best flare against a straight port: higher level before noise is heard',
    leastDb: 10,
    mostDb: 16,
    mark: 'published',
    source: 'A. Bezzola et al., Audio Engineering Society e-library 20683, 2019',
  },
  {
    what: 'the best flare against a slightly wrong one',
    leastDb: 1,
    mostDb: 3,
    mark: 'published',
    source: 'A. Bezzola et al., 2019',
  },
] as const;
