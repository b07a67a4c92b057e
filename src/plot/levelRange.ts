/**
 * Range of a level axis: 50 dB high, its ends on multiples of 5 dB, the greatest of the given levels between 5 and 10 dB
 * below its top. Without a level it is 50 to 100 dB.
 * Example: `levelRange(88.2)` is `[45, 95]`.
 */
export function levelRange(greatestDb: number | null): readonly [number, number] {
  if (greatestDb === null || !Number.isFinite(greatestDb)) return [50, 100];
  const top = Math.floor(greatestDb / 5) * 5 + 10;
  return [top - 50, top];
}
