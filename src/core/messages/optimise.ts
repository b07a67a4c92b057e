import type { WordingByCode } from './problem.ts';

/** Sentences of the codes that begin with `optimise.`. */
export const optimiseWording: WordingByCode = {
  'optimise.bounds': (v) => ({
    sentence: `The least value allowed for ${v.part} is not above 0, or it is larger than the greatest one.`,
    remedy: `Set a least value above 0 and a greatest one that is not smaller for ${v.part}.`,
  }),
  'optimise.no-choice': (v) => ({
    sentence: `No value that can be bought for ${v.part} lies within its limits.`,
    remedy: `Widen the limits of ${v.part}, or choose a finer series or other values for its kind.`,
  }),
  'optimise.no-weight': () => ({
    sentence: 'The target counts at no frequency, so every design would be as good as any other.',
    remedy: 'Give it a band with a weight above 0 within the computed range.',
  }),
};
