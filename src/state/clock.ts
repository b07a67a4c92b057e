/** Waiting, injected so that tests decide when time passes. */
export interface Clock {
  /** Runs once after so many milliseconds; the returned function calls it off. */
  after(milliseconds: number, run: () => void): () => void;
}

export const systemClock: Clock = {
  after(milliseconds, run) {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
  },
};
