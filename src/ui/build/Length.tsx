import { type WorkshopLength, workshopLength } from '../../core/build/panels/index.ts';

/** Below this the inch figure is as good as the other. */
const WORTH_SAYING_M = 0.0002;

/** Inches to the nearest 1/32 with what the rounding adds or takes, in mm: @example '4 19/32″ (−0.3)' */
function inchText({ inches, inchErrorM }: WorkshopLength): string {
  if (Math.abs(inchErrorM) <= WORTH_SAYING_M) return `${inches}″`;
  return `${inches}″ (${inchErrorM > 0 ? '+' : '−'}${(Math.abs(inchErrorM) * 1000).toFixed(1)})`;
}

type Measured = number | WorkshopLength;
const read = (of: Measured): WorkshopLength => (typeof of === 'number' ? workshopLength(of) : of);

/**
 * A length as the workshop reads it, or several with words round them: millimetres, then inches. Numbers are metres.
 * @example <Length of={['Ø ', 0.105, ' × ', 0.004, ' deep']} />
 */
export function Length({ of }: { readonly of: Measured | readonly (Measured | string)[] }) {
  const parts = (Array.isArray(of) ? of : [of]) as readonly (Measured | string)[];
  const inWords = (write: (length: WorkshopLength) => string): string =>
    parts.map((part) => (typeof part === 'string' ? part : write(read(part)))).join('');
  return (
    <span className="build-length">
      <b>{inWords(({ millimetres }) => millimetres)}</b> <small>{inWords(inchText)}</small>
    </span>
  );
}
