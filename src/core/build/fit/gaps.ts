import type { Shell } from '../panels/shell.ts';
import { type Body, bodyCorners, boxFrom, type FlatShape, type WallBox } from './body.ts';

/** Clear distance of two shapes on one wall, m; negative by how far one reaches into the other. */
export function flatGapM(a: FlatShape, b: FlatShape): number {
  const [dx, dy] = [Math.abs(a.acrossM - b.acrossM), Math.abs(a.upM - b.upM)];
  if ('radiusM' in a.size && 'radiusM' in b.size) return Math.hypot(dx, dy) - a.size.radiusM - b.size.radiusM;
  const half = (shape: FlatShape, way: 'halfAcrossM' | 'halfUpM') => ('radiusM' in shape.size ? 0 : shape.size[way]);
  const x = dx - half(a, 'halfAcrossM') - half(b, 'halfAcrossM');
  const y = dy - half(a, 'halfUpM') - half(b, 'halfUpM');
  const outside = Math.hypot(Math.max(0, x), Math.max(0, y));
  const radiusM = 'radiusM' in a.size ? a.size.radiusM : 'radiusM' in b.size ? b.size.radiusM : 0;
  return (outside > 0 ? outside : Math.max(x, y)) - radiusM;
}

const sizeAt = ({ sections }: Body, depthM: number): FlatShape['size'] => {
  const next = sections.findIndex((section) => section.depthM >= depthM);
  const [from, to] = [sections[Math.max(0, next - 1)]!, sections[next < 0 ? sections.length - 1 : next]!];
  if (!('radiusM' in from.size) || !('radiusM' in to.size) || to.depthM === from.depthM) return to.size;
  const share = (depthM - from.depthM) / (to.depthM - from.depthM);
  return { radiusM: from.size.radiusM + share * (to.size.radiusM - from.size.radiusM) };
};

/** Depths at which two stacks of sections are to be compared; none where they do not reach past one another. */
function sharedDepths(lists: readonly (readonly number[])[]): number[] {
  const from = Math.max(...lists.map((depths) => Math.min(...depths)));
  const to = Math.min(...lists.map((depths) => Math.max(...depths)));
  if (to - from <= 1e-9) return [];
  return [from, to, ...lists.flat().filter((depth) => depth > from && depth < to)];
}

const depthsOf = ({ sections }: Body): number[] => sections.map(({ depthM }) => depthM);
const shapeAt = (body: Body, depthM: number): FlatShape => ({
  acrossM: body.acrossM,
  upM: body.upM,
  size: sizeAt(body, depthM),
});

/** Clear distance of a body to a box, square to the body's axis, m; infinite where they lie at different depths. */
export function bodyToBoxM(body: Body, { acrossM, upM, depthM }: WallBox): number {
  const flat: FlatShape = {
    acrossM: (acrossM[0] + acrossM[1]) / 2,
    upM: (upM[0] + upM[1]) / 2,
    size: { halfAcrossM: (acrossM[1] - acrossM[0]) / 2, halfUpM: (upM[1] - upM[0]) / 2 },
  };
  return Math.min(
    ...sharedDepths([depthsOf(body), depthM]).map((depth) => flatGapM(shapeAt(body, depth), flat)),
    Number.POSITIVE_INFINITY,
  );
}

/**
 * Clear distance of two bodies, m. On one wall it is exact; on two walls each is held against the box round the other and the larger
 * distance counts, which is on the safe side by at most the corners of those boxes.
 */
export function bodyToBodyM(a: Body, b: Body, shell: Shell): number {
  if (a.wall === b.wall)
    return Math.min(
      ...sharedDepths([depthsOf(a), depthsOf(b)]).map((depth) => flatGapM(shapeAt(a, depth), shapeAt(b, depth))),
      Number.POSITIVE_INFINITY,
    );
  return Math.max(
    bodyToBoxM(a, boxFrom(bodyCorners(b, shell), shell, a.wall)),
    bodyToBoxM(b, boxFrom(bodyCorners(a, shell), shell, b.wall)),
  );
}
