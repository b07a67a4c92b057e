import { type Combination, nearestCombinations } from '../../units/nearestCombination.ts';
import type { DrawerKind, DrawerPart } from './drawerPart.ts';

/** A combination with the drawer's rows that it takes its parts from (twice the same for two of a kind). */
export interface DrawerCombination extends Combination {
  readonly parts: readonly DrawerPart[];
}

/**
 * The parts of a drawer, single or in pairs, nearest to a value (ohm, farad or henry), best first, at most `most`. No part is used more often
 * than there are pieces of it.
 * @example nearestInDrawer(8.7e-6, 'capacitor', drawer, { pairs: true, most: 3 })
 */
export function nearestInDrawer(
  target: number,
  kind: DrawerKind,
  drawer: readonly DrawerPart[],
  options: { readonly pairs: boolean; readonly most: number },
): DrawerCombination[] {
  const pieces = drawer
    .filter((part) => part.kind === kind)
    .flatMap((part) => new Array<DrawerPart>(Math.min(2, part.count ?? 2)).fill(part));
  const found = nearestCombinations(
    target,
    pieces.map(({ value }) => value),
    { pairs: options.pairs, addsIn: kind === 'capacitor' ? 'parallel' : 'series', pieces: 'one-each' },
    options.most,
  );
  return found.map((combination) => ({ ...combination, parts: combination.places.map((place) => pieces[place]!) }));
}
