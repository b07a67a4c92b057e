import { type Judgement, judgeDifference } from './judgeDifference.ts';
import { type DifferenceOptions, type LevelCurve, type LevelDifference, levelDifference } from './levelDifference.ts';
import type { MatchWindow } from './matchWindows.ts';

/** What was measured of the two channels; null where it was not. */
export interface ChannelPair {
  readonly response: { readonly left: LevelCurve; readonly right: LevelCurve } | null;
  /** As 20 lg of the ohms. */
  readonly impedance: { readonly left: LevelCurve; readonly right: LevelCurve } | null;
}

export interface Compared {
  readonly difference: LevelDifference;
  readonly judgement: Judgement;
}

/**
 * What a mismatch points at.
 * - `none`: all that was compared lies within the window.
 * - `sensitivity`: the responses differ, the impedances agree: the driver's sensitivity, its place or the microphone's.
 * - `network`: both differ, the responses where the impedances do or beyond: a part of the network or a driver.
 * - `impedance-alone`: only the impedances differ: a resonance, a box or a part that the response does not show there.
 * - `open`: the responses differ and no impedance was measured.
 */
export type Suspicion = 'none' | 'sensitivity' | 'network' | 'impedance-alone' | 'open';

export interface ChannelMatch {
  /** Left less right; null where it was not measured or the curves share too little. */
  readonly response: Compared | null;
  readonly impedance: Compared | null;
  readonly suspicion: Suspicion;
}

/**
 * Compares left with right: difference of the smoothed responses, aligned over a band, and of the impedances, each against its window.
 *
 * Impedances are never aligned. Polarity does not show in levels. Example: channelMatch(pair, MATCH_WINDOWS[1], { fraction: 6, alignHz: [200, 4000] })
 */
export function channelMatch(pair: ChannelPair, window: MatchWindow, options: DifferenceOptions): ChannelMatch {
  const compare = (
    curves: ChannelPair['response'],
    bands: MatchWindow['response'],
    how: DifferenceOptions,
  ): Compared | null => {
    const difference = curves === null ? null : levelDifference(curves.left, curves.right, how);
    return difference === null ? null : { difference, judgement: judgeDifference(difference, bands) };
  };
  const response = compare(pair.response, window.response, options);
  const impedance = compare(pair.impedance, window.impedance, { ...options, alignHz: null });
  return { response, impedance, suspicion: suspicionOf(response, impedance) };
}

function suspicionOf(response: Compared | null, impedance: Compared | null): Suspicion {
  const differs = response !== null && !response.judgement.within;
  const loadDiffers = impedance !== null && !impedance.judgement.within;
  if (differs) return impedance === null ? 'open' : loadDiffers ? 'network' : 'sensitivity';
  return loadDiffers ? 'impedance-alone' : 'none';
}
