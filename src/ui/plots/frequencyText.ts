/** A frequency as people write it, three significant digits: `42.0 Hz`, `3.15 kHz`. */
export function frequencyText(hz: number): string {
  return hz >= 999.5 ? `${(hz / 1000).toPrecision(3)} kHz` : `${hz.toPrecision(3)} Hz`;
}
