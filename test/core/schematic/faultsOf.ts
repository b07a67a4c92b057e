import type { Part } from '../../../src/core/circuit/part.ts';
import type { Point, SchematicPlan, TextAnchor } from '../../../src/core/schematic/index.ts';

// Reads a drawing as a person does, from its geometry alone: shares no code with the layout.

interface Box {
  readonly what: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
interface Segment {
  readonly node: string;
  readonly from: Point;
  readonly to: Point;
}

const isSame = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

function boxesOf(plan: SchematicPlan): { symbols: Box[]; texts: Box[] } {
  const text = ({ x, y, align, width }: TextAnchor, what: string): Box => {
    const left = align === 'start' ? x : align === 'end' ? x - width : x - width / 2;
    return { what, left, right: left + width, top: y - 0.5, bottom: y + 0.5 };
  };
  return {
    symbols: plan.parts.map(({ partId, centre: { x, y }, orientation }) => {
      const [w, h] = orientation === 'horizontal' ? [2, 1] : [1, 2];
      return { what: partId, left: x - w, right: x + w, top: y - h, bottom: y + h };
    }),
    texts: plan.parts.flatMap((part) => [
      text(part.valueAnchor, `value of ${part.partId}`),
      text(part.nameAnchor, `name of ${part.partId}`),
    ]),
  };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

function segmentsOf(plan: SchematicPlan): Segment[] {
  return plan.wires.flatMap(({ node, points }) =>
    points.slice(1).map((to, k) => {
      const from = points[k]!;
      return from.x < to.x || from.y < to.y ? { node, from, to } : { node, from: to, to: from };
    }),
  );
}

const isLevel = ({ from, to }: Segment): boolean => from.y === to.y;
const holds = ({ from, to }: Segment, { x, y }: Point): boolean => from.x <= x && x <= to.x && from.y <= y && y <= to.y;
const isInside = (segment: Segment, point: Point): boolean =>
  holds(segment, point) && !isSame(segment.from, point) && !isSame(segment.to, point);

/** Where two pieces of wire meet: nowhere, in one point, or along a stretch. */
function meeting(a: Segment, b: Segment): Point | 'stretch' | null {
  const left = Math.max(a.from.x, b.from.x);
  const right = Math.min(a.to.x, b.to.x);
  const top = Math.max(a.from.y, b.from.y);
  const bottom = Math.min(a.to.y, b.to.y);
  if (left > right || top > bottom) return null;
  return left === right && top === bottom ? { x: left, y: top } : 'stretch';
}

/** Number of plain crossings: two wires square through each other without a dot. */
export function crossingsOf(plan: SchematicPlan): number {
  const segments = segmentsOf(plan);
  return segments.reduce(
    (count, a, k) => count + segments.slice(k + 1).filter((b) => isCrossing(plan, a, b)).length,
    0,
  );
}

function isCrossing(plan: SchematicPlan, a: Segment, b: Segment): boolean {
  const at = meeting(a, b);
  if (at === null || at === 'stretch' || isLevel(a) === isLevel(b)) return false;
  return isInside(a, at) && isInside(b, at) && !plan.dots.some((dot) => isSame(dot, at));
}

/** Everything that is wrong with a drawing of these parts, in words; empty when it is right. */
export function faultsOf(parts: readonly Part[], plan: SchematicPlan): string[] {
  return [
    ...partFaults(parts, plan),
    ...spaceFaults(plan),
    ...wireFaults(parts, plan),
    ...dotFaults(plan),
    ...laneFaults(parts, plan),
  ];
}

function partFaults(parts: readonly Part[], plan: SchematicPlan): string[] {
  const faults: string[] = [];
  const listed = parts.map((part) => part.id).sort();
  const drawn = plan.parts.map((part) => part.partId).sort();
  if (listed.join() !== drawn.join()) faults.push(`drawn ${drawn.join()} of ${listed.join()}`);
  for (const { partId, centre, orientation, pins } of plan.parts) {
    const offsets = pins.map(({ x, y }) =>
      orientation === 'horizontal' ? [x - centre.x, y - centre.y] : [y - centre.y, x - centre.x],
    );
    const along = offsets.map(([a]) => a!).sort((a, b) => a - b);
    if (along[0] !== -2 || along[1] !== 2 || offsets.some(([, across]) => across !== 0))
      faults.push(`pins of ${partId}`);
  }
  return faults;
}

function spaceFaults(plan: SchematicPlan): string[] {
  const { symbols, texts } = boxesOf(plan);
  const boxes = [...symbols, ...texts];
  const faults: string[] = [];
  boxes.forEach((a, k) => {
    for (const b of boxes.slice(k + 1)) if (overlap(a, b)) faults.push(`${a.what} lies on ${b.what}`);
    if (a.left < 0 || a.top < 0 || a.right > plan.width || a.bottom > plan.height)
      faults.push(`${a.what} is off the sheet`);
  });
  for (const segment of segmentsOf(plan)) {
    const { node, from, to } = segment;
    if (from.x < 0 || from.y < 0 || to.x > plan.width || to.y > plan.height)
      faults.push(`a wire of ${node} is off the sheet`);
    for (const box of boxes) {
      const isThrough = from.x < box.right && to.x > box.left && from.y < box.bottom && to.y > box.top;
      if (isThrough) faults.push(`a wire of ${node} runs through ${box.what}`);
    }
  }
  return faults;
}

function wireFaults(parts: readonly Part[], plan: SchematicPlan): string[] {
  const faults: string[] = [];
  for (const { node, points } of plan.wires) {
    if (points.length < 2) faults.push(`a wire of ${node} has one point`);
    points.forEach(({ x, y }, k) => {
      if (!Number.isInteger(x * 2) || !Number.isInteger(y * 2))
        faults.push(`a wire of ${node} leaves the grid at ${x}, ${y}`);
      const next = points[k + 1];
      if (next && (x === next.x) === (y === next.y)) faults.push(`a wire of ${node} is slanted or of no length`);
    });
  }

  const segments = segmentsOf(plan);
  const nodesOf = new Map(parts.map((part) => [part.id, part.nodes]));
  const pins = plan.parts.flatMap(({ partId, pins: [first, second] }) => {
    const [a, b] = nodesOf.get(partId)!;
    return [
      { node: a, at: first, partId },
      { node: b, at: second, partId },
    ];
  });
  const parent = Array.from({ length: segments.length + pins.length }, (_, k) => k);
  const rootOf = (k: number): number => (parent[k] === k ? k : rootOf(parent[k]!));
  const join = (a: number, b: number, nodes: readonly [string, string], where: string): void => {
    if (nodes[0] !== nodes[1]) faults.push(`${nodes[0]} touches ${nodes[1]} ${where}`);
    parent[rootOf(a)] = rootOf(b);
  };
  segments.forEach((a, i) => {
    segments.slice(i + 1).forEach((b, k) => {
      const at = meeting(a, b);
      if (at === null || isCrossing(plan, a, b)) return;
      join(i, i + 1 + k, [a.node, b.node], at === 'stretch' ? 'along a stretch' : `at ${at.x}, ${at.y}`);
    });
    pins.forEach((pin, k) => {
      if (holds(a, pin.at)) join(i, segments.length + k, [a.node, pin.node], `at a pin of ${pin.partId}`);
    });
  });
  pins.forEach((a, i) => {
    pins.slice(i + 1).forEach((b, k) => {
      if (isSame(a.at, b.at))
        join(
          segments.length + i,
          segments.length + i + 1 + k,
          [a.node, b.node],
          `at pins of ${a.partId} and ${b.partId}`,
        );
    });
  });
  const roots = new Map<string, number>();
  pins.forEach(({ node, partId }, k) => {
    const root = rootOf(segments.length + k);
    if (roots.has(node) && roots.get(node) !== root) faults.push(`${node} does not reach ${partId}`);
    else roots.set(node, root);
  });
  segments.forEach(({ node }, k) => {
    if (roots.get(node) !== rootOf(k)) faults.push(`a wire of ${node} hangs on nothing`);
  });
  return faults;
}

function dotFaults(plan: SchematicPlan): string[] {
  const faults: string[] = [];
  const segments = segmentsOf(plan);
  const pins = plan.parts.flatMap((part) => part.pins);
  const ends = [...segments.flatMap(({ from, to }) => [from, to]), ...pins];
  for (const at of ends) {
    const wireArms = segments.reduce((sum, s) => sum + (isInside(s, at) ? 2 : holds(s, at) ? 1 : 0), 0);
    const arms = wireArms + (wireArms > 0 ? pins.filter((pin) => isSame(pin, at)).length : 0);
    const isDotted = plan.dots.some((dot) => isSame(dot, at));
    if (arms > 2 !== isDotted) faults.push(`${arms} arms at ${at.x}, ${at.y} ${isDotted ? 'with' : 'without'} a dot`);
  }
  for (const dot of plan.dots)
    if (!ends.some((end) => isSame(end, dot))) faults.push(`a dot at ${dot.x}, ${dot.y} joins nothing`);
  return faults;
}

function laneFaults(parts: readonly Part[], plan: SchematicPlan): string[] {
  const faults: string[] = [];
  const ways = plan.lanes.filter((lane) => lane.kind === 'way');
  const speakers = plan.parts.filter((part) => part.kind === 'speaker');
  if (ways.length !== parts.filter((part) => part.kind === 'speaker').length) faults.push('not one lane per speaker');
  ways.forEach((lane, k) => {
    if (lane.bottom <= lane.top || lane.top !== (ways[k - 1]?.bottom ?? 0))
      faults.push(`lane ${k} does not follow the one above`);
  });
  for (const { partId, centre, orientation } of speakers) {
    if (centre.x !== plan.speakerX || orientation !== 'vertical') faults.push(`${partId} is out of line`);
  }
  for (const { partId, centre, lane } of plan.parts) {
    const band = plan.lanes[lane];
    if (band === undefined || centre.y < band.top || centre.y > band.bottom)
      faults.push(`${partId} is outside its lane`);
    else if (band.kind === 'way' && centre.x < plan.trunkWidth) faults.push(`${partId} of a way stands in the trunk`);
  }
  return faults;
}
