import { type Way, waysInOrder } from '../waysInOrder.ts';
import { useAlike } from './useAlike.ts';

const sameWays = (a: readonly Way[], b: readonly Way[]): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((way, k) => {
      const other = b[k]!;
      return way.speakerId === other.speakerId && way.driver === other.driver && way.name === other.name;
    }));

/** The ways in lane order, the same list while no way, driver or order changes. */
export const useWays = (): readonly Way[] => useAlike((s) => waysInOrder(s.project), sameWays);
