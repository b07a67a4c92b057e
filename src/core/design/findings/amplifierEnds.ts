import type { Finding } from '../../messages/problem.ts';
import type { KeyFigures } from '../evaluation.ts';
import type { Check } from './context.ts';

const CODES = { voltage: 'finding.amplifier-voltage', current: 'finding.amplifier-current' };

/** Amplifiers that are asked for more than they can give: they cut the tops off, which also feeds tweeters what they cannot bear. */
export const amplifiersBeyond = (peaks: KeyFigures['amplifierPeaks']): Finding[] =>
  peaks.flatMap(({ id, quantity, peak, limit, atHz }) =>
    peak > limit
      ? [
          {
            severity: 'warning' as const,
            code: CODES[quantity],
            place: { kind: 'part' as const, id },
            values: { value: peak, limit, atHz },
          },
        ]
      : [],
  );

/** Voltage and current (peaks of a sine at the set drive) against what each channel can give, where that is stated. */
export const amplifierEnds: Check = ({ figures }) => amplifiersBeyond(figures.amplifierPeaks);
