import fc from 'fast-check';
import {
  type Cabinet,
  type CabinetSize,
  EDGES,
  type Edge,
  type Joint,
  WALLS,
  type Wall,
} from '../../../../src/core/build/index.ts';

type Joints = Readonly<Record<Edge, Joint>>;
const record = <K extends string, T>(keys: readonly K[], value: (key: K) => T): Record<K, T> =>
  Object.fromEntries(keys.map((key) => [key, value(key)])) as Record<K, T>;
const pairOf = (edge: Edge): readonly [Wall, Wall] => edge.split('-') as [Wall, Wall];

/** Each edge butt or rebate, with the wall that stands earlier in the order running through: no corner is left open. */
export const rankedJoints = (order: readonly Wall[], rebateM: (edge: Edge) => number): Joints =>
  record(EDGES, (edge) => {
    const [a, b] = pairOf(edge);
    const through = order.indexOf(a) < order.indexOf(b) ? a : b;
    return rebateM(edge) > 0 ? { kind: 'rebate', cutInto: through, depthM: rebateM(edge) } : { kind: 'butt', through };
  });

/** Left, top, right and bottom mitred into a ring; front and back by the given joint for each of their edges. */
export const ringJoints = (face: (wall: 'front' | 'back', ring: Wall) => Joint): Joints =>
  record(EDGES, (edge) => {
    const [a, b] = pairOf(edge);
    return a === 'front' || a === 'back' ? face(a, b) : { kind: 'mitre' };
  });

export const cabinet = (size: Partial<CabinetSize>, parts: Partial<Cabinet> = {}): Cabinet => {
  const widthM = size.widthM ?? 0.25;
  return {
    size: {
      measured: 'outside',
      heightM: 0.4,
      depthM: 0.3,
      slopeRad: 0,
      ...size,
      widthM,
      backWidthM: size.backWidthM ?? widthM,
    },
    thicknessM: record(WALLS, () => 0.018),
    joints: rankedJoints(['top', 'bottom', 'left', 'right', 'front', 'back'], () => 0),
    dividers: [],
    braces: [],
    drivers: [],
    ports: [],
    contents: [],
    ...parts,
  };
};

const mm = (from: number, to: number) => fc.integer({ min: from, max: to }).map((size) => size / 1000);
const thicknesses = fc.record(record(WALLS, () => mm(9, 30)));
const orders = fc.shuffledSubarray([...WALLS], { minLength: 6, maxLength: 6 });
const mitred = record(EDGES, (): Joint => ({ kind: 'mitre' }));

/** Any joints that can be made; rebates only where every edge is square. */
const joints = (square: boolean): fc.Arbitrary<Joints> => {
  const depth = square ? fc.constantFrom(0, 0.003, 0.005, 0.008) : fc.constant(0);
  return fc.oneof(
    fc
      .tuple(orders, fc.array(depth, { minLength: 12, maxLength: 12 }))
      .map(([order, depths]) => rankedJoints(order, (edge) => depths[EDGES.indexOf(edge)]!)),
    fc.tuple(fc.boolean(), fc.boolean(), depth, depth).map(([frontRuns, backRuns, frontM, backM]) =>
      ringJoints((wall, ring) => {
        const rebateM = wall === 'front' ? frontM : backM;
        if (rebateM > 0) return { kind: 'rebate', cutInto: ring, depthM: rebateM };
        return { kind: 'butt', through: (wall === 'front' ? frontRuns : backRuns) ? wall : ring };
      }),
    ),
    fc.constant(mitred),
  );
};

export const anyCabinet: fc.Arbitrary<Cabinet> = fc.boolean().chain((square) =>
  fc
    .record({
      measured: fc.constantFrom('outside' as const, 'inside' as const),
      widthM: mm(150, 600),
      narrowing: square ? fc.constant(1) : fc.double({ min: 0.7, max: 1.2, noNaN: true }),
      heightM: mm(150, 900),
      depthM: mm(250, 500),
      slope: square ? fc.constant(0) : fc.double({ min: -0.15, max: 0.15, noNaN: true }),
      thicknessM: thicknesses,
      joints: joints(square),
    })
    .map(({ narrowing, slope, thicknessM, joints, ...size }) =>
      cabinet({ ...size, backWidthM: size.widthM * narrowing, slopeRad: slope }, { thicknessM, joints }),
    ),
);
