import { describe, expect, it } from 'vitest';
import { dropFrequencyHz, meanLevelDb, rippleDb } from '../../../src/core/design/levelFigures.ts';
import { sweepGrid } from '../../../src/core/design/sweepGrid.ts';

const grid = sweepGrid(10, 20000, 1000);
/** A second-order Butterworth high-pass at 50 Hz and low-pass at 9 kHz at 88 dB: closed form, corners are 3.01 dB down. */
const levels = grid.map((hz) => 88 - 10 * Math.log10(1 + (50 / hz) ** 4) - 10 * Math.log10(1 + (hz / 9000) ** 4));

describe('level figures', () => {
  it('finds the mean of a straight slope on a logarithmic axis at its middle', () => {
    const slope = grid.map((hz) => 10 * Math.log2(hz / Math.sqrt(200 * 2000)));
    // The band's ends fall between points of the grid: within half a step, 0.0055 octave.
    expect(Math.abs(meanLevelDb(slope, grid)!)).toBeLessThan(0.06);
    expect(
      meanLevelDb(
        grid.map(() => 90),
        grid,
      ),
    ).toBeCloseTo(90, 12);
  });

  it('finds the corners of a known response', () => {
    const mean = meanLevelDb(levels, grid)!;
    expect(mean).toBeCloseTo(88, 1);
    expect(dropFrequencyHz(levels, grid, 200, 'down', 88, 3.0103)).toBeCloseTo(50, 1);
    expect(dropFrequencyHz(levels, grid, 2000, 'up', 88, 3.0103)! / 9000).toBeCloseTo(1, 3);
  });

  it('says null where the level never falls so far', () => {
    const flat = grid.map(() => 80);
    expect(dropFrequencyHz(flat, grid, 200, 'down', 80)).toBeNull();
    expect(meanLevelDb(flat, grid, 30000, 40000)).toBeNull();
  });

  it('takes half of greatest minus least for ripple', () => {
    const wave = grid.map((hz) => 80 + 2 * Math.sin(6 * Math.log(hz)));
    expect(rippleDb(wave, grid, 200, 10000)).toBeCloseTo(2, 2);
  });
});

describe('a level that is already down where the search begins', () => {
  it('is answered by the crossing on the other side of the start', () => {
    // 6 dB down at 200 Hz, rising 12 dB an octave up to 400 Hz.
    const rising = grid.map((hz) => Math.min(90, 84 + 12 * Math.log2(hz / 200)));
    expect(dropFrequencyHz(rising, grid, 200, 'down', 90)! / (200 * 2 ** 0.25)).toBeCloseTo(1, 3);
    expect(
      dropFrequencyHz(
        grid.map(() => 50),
        grid,
        200,
        'down',
        90,
      ),
    ).toBeNull();
  });
});
