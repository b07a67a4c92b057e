import type { Wood } from '../../document/schema.ts';
import { type Cabinet, EDGES, type Edge, type Joint, type Wall } from '../panels/index.ts';

const RANKS: Readonly<Record<Wood['through'], readonly Wall[]>> = {
  sides: ['left', 'right', 'top', 'bottom', 'front', 'back'],
  'top-and-bottom': ['top', 'bottom', 'left', 'right', 'front', 'back'],
};

/**
 * How every edge of a cabinet is joined. Butted and rebated, the walls that run through come first and front and back lie between
 * all others; mitred, the four walls round them form a ring and front and back lie in it.
 */
export function jointsOf({ joint, through, rebateM }: Pick<Wood, 'joint' | 'through' | 'rebateM'>): Cabinet['joints'] {
  const rank = RANKS[through];
  const jointAt = (edge: Edge): Joint => {
    const [a, b] = edge.split('-') as [Wall, Wall];
    const first = rank.indexOf(a) < rank.indexOf(b) ? a : b;
    const ofFace = a === 'front' || a === 'back';
    if (joint === 'mitre' && !ofFace) return { kind: 'mitre' };
    if (joint === 'rebate' && rebateM > 0) return { kind: 'rebate', cutInto: first, depthM: rebateM };
    return { kind: 'butt', through: first };
  };
  return Object.fromEntries(EDGES.map((edge) => [edge, jointAt(edge)])) as Record<Edge, Joint>;
}
