/** Working memory that a kernel keeps between calls, so that a sweep makes no garbage. Contents are whatever was left there. */
export interface ScratchBuffers {
  /** A buffer of this length; its own until `release`. */
  take(length: number): Float64Array;
  /** Gives all taken buffers back. */
  release(): void;
}

/**
 * A store of growing buffers for one kernel that runs to its end before it is called again (no callbacks into itself).
 *
 * The same request in the same order gets the same memory; nothing of it may leave the kernel.
 *
 * Example: const scratch = scratchBuffers(); const sums = scratch.take(1000); ...; scratch.release();
 */
export const scratchBuffers = (): ScratchBuffers => {
  const stores: Float64Array[] = [];
  let taken = 0;
  return {
    take(length) {
      const store = stores[taken];
      const enough = store !== undefined && store.length >= length ? store : new Float64Array(length);
      stores[taken++] = enough;
      return enough.length === length ? enough : enough.subarray(0, length);
    },
    release() {
      taken = 0;
    },
  };
};
