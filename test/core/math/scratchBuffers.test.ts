import { describe, expect, it } from 'vitest';
import { scratchBuffers } from '../../../src/core/math/index.ts';

describe('scratchBuffers', () => {
  it('gives each request its own memory until release, and the same memory again afterwards', () => {
    const scratch = scratchBuffers();
    const first = scratch.take(4);
    const second = scratch.take(4);
    first.fill(1);
    second.fill(2);
    expect(first[0]).toBe(1);
    scratch.release();
    expect(scratch.take(4).buffer).toBe(first.buffer);
    expect(scratch.take(3).buffer).toBe(second.buffer);
  });

  it('grows when asked for more', () => {
    const scratch = scratchBuffers();
    scratch.take(2);
    scratch.release();
    expect(scratch.take(100)).toHaveLength(100);
  });
});
