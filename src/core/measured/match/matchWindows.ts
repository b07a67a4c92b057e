import type { WindowBand } from './judgeDifference.ts';

/** What a pair is judged by: bands of the response's difference, and one limit for the impedance's. */
export interface MatchWindow {
  readonly id: 'close' | 'usual' | 'wide';
  readonly response: readonly WindowBand[];
  readonly impedance: readonly WindowBand[];
}

const window = (
  id: MatchWindow['id'],
  bassDb: number,
  middleDb: number,
  topDb: number,
  impedanceDb: number,
): MatchWindow => ({
  id,
  response: [
    { fromHz: 60, toHz: 200, limitDb: bassDb },
    { fromHz: 200, toHz: 8000, limitDb: middleDb },
    { fromHz: 8000, toHz: 16000, limitDb: topDb },
  ],
  impedance: [{ fromHz: 20, toHz: 20000, limitDb: impedanceDb }],
});

/**
 * Windows to begin with; common practice, no source. Close: drivers chosen in pairs, parts within 2 %; usual: drivers of one batch, parts
 * within 5 %; wide: parts within 10 %, measured in a room. The bass is wider, where rooms and break-in act, and so is the top, where
 * a centimetre of the microphone's place does. An impedance differs by 0.42 dB for each 5 %.
 */
export const MATCH_WINDOWS: readonly MatchWindow[] = [
  window('close', 1, 0.5, 1, 0.5),
  window('usual', 1.5, 1, 2, 1),
  window('wide', 3, 2, 3, 2),
];
