import type { Part } from '../circuit/part.ts';
import { circuitView } from './circuitView.ts';
import { compose } from './compose.ts';
import { layOut } from './layOut.ts';
import type { SchematicPlan } from './plan.ts';
import { tabulate } from './tabulate.ts';
import { wireUp } from './wireUp.ts';

/** Free space in units that is tried in turn between lanes and columns until every wire finds its way. */
const rooms = [0, 1, 2, 4];

/**
 * Draws a circuit: one lane per speaker, in series along the upper rail what is in series, across to the return what is
 * across. Fails for no list of parts.
 *
 * A way's row ends at its speaker; what several ways share stands in the trunk at the left; what bypasses part of a row
 * stands above it as a bridge; pieces between ways are links in free space between the lanes; what belongs to no
 * amplifier or speaker stands in the loose lane. A network that leaves no way for its wires is drawn as a plain table
 * of parts on node lines.
 *
 * Own synthesis of: series-parallel reduction (Duffin, J. Math. Anal. Appl. 10 (1965) 303), layers by order of parts on
 * the path from the source, interval stacking of bridges and buses, cheapest orthogonal paths for the rest.
 *
 * @param parts the network; an amplifier's or a speaker's first node is its plus terminal
 * @param order ids of the speakers from top to bottom; others follow in the order of the parts
 * @param previous the drawing before an edit: what stood in it keeps its order
 * @returns positions in drawing units, y downwards; every part once
 * @example drawSchematic(parts, ['LS1', 'LS2']).wires
 */
export function drawSchematic(
  parts: readonly Part[],
  order: readonly string[],
  previous?: SchematicPlan,
): SchematicPlan {
  const views = previous === undefined ? [circuitView(parts)] : [circuitView(parts, previous), circuitView(parts)];
  for (const view of views) {
    const composition = compose(view, order);
    for (const room of rooms) {
      const plan = wireUp(parts, layOut(view, composition, room));
      if (plan !== null) return plan;
    }
  }
  const plan = wireUp(parts, tabulate(views[0]!, compose(views[0]!, order)));
  if (plan === null) throw new Error('the table of parts has a wire without a way');
  return plan;
}
