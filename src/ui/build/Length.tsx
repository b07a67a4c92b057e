import { type WorkshopLength, workshopLength } from '../../core/build/panels/index.ts';

/** Below this the inch figure is as good as the other. */
const WORTH_SAYING_M = 0.0002;

/** What an inch figure to the nearest 1/32 adds to or takes from the length: @example '+0.3' */
function errorText({ inchErrorM }: WorkshopLength): string {
  if (Math.abs(inchErrorM) <= WORTH_SAYING_M) return '';
  return `${inchErrorM > 0 ? '+' : '−'}${(Math.abs(inchErrorM) * 1000).toFixed(1)}`;
}

/** A length as the workshop reads it: millimetres, and below them inches to 1/32 with what the rounding adds or takes. */
export function Length({ of, before = '' }: { readonly of: number | WorkshopLength; readonly before?: string }) {
  const length = typeof of === 'number' ? workshopLength(of) : of;
  const error = errorText(length);
  return (
    <span className="build-length">
      <b>
        {before}
        {length.millimetres}
      </b>{' '}
      <small>
        {length.inches}″{error === '' ? '' : ` (${error})`}
      </small>
    </span>
  );
}
