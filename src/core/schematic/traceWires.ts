import type { SchematicPlan, Wire } from './plan.ts';
import { pointOf, type Sheet } from './sheet.ts';

/** Reads polylines and join dots off a sheet; `names` gives the node of each number. */
export function traceWires(sheet: Sheet, names: readonly string[]): Pick<SchematicPlan, 'wires' | 'dots'> {
  const { columns, rightward, downward, pins } = sheet;
  const wires: Wire[] = [];
  const dots: SchematicPlan['dots'][number][] = [];
  // Steps are numbered as on the sheet: 2 × point to the right, 2 × point + 1 downwards.
  const isDone = new Uint8Array(2 * rightward.length);

  for (const [k, name] of names.entries()) {
    const node = k + 1;
    const armsAt = (at: number): number =>
      Number(rightward[at - 1] === node) +
      Number(rightward[at] === node) +
      Number(downward[at - columns] === node) +
      Number(downward[at] === node);
    const isStop = (at: number): boolean => pins[at] === node || armsAt(at) !== 2;
    /** Takes a step that was not taken yet; returns where it leads, -1 where there is none. */
    const stepFrom = (at: number): number => {
      const take = (step: number, next: number): number => {
        isDone[step] = 1;
        return next;
      };
      if (rightward[at] === node && !isDone[2 * at]) return take(2 * at, at + 1);
      if (downward[at] === node && !isDone[2 * at + 1]) return take(2 * at + 1, at + columns);
      if (rightward[at - 1] === node && !isDone[2 * (at - 1)]) return take(2 * (at - 1), at - 1);
      const up = at - columns;
      return downward[up] === node && !isDone[2 * up + 1] ? take(2 * up + 1, up) : -1;
    };
    const follow = (start: number): void => {
      for (let next = stepFrom(start); next >= 0; next = stepFrom(start)) {
        const line = [start];
        for (; next >= 0; next = isStop(next) ? -1 : stepFrom(next)) {
          const [before, last] = [line.at(-2), line.at(-1)!];
          if (before !== undefined && isLevel(before, last, columns) === isLevel(last, next, columns)) line.pop();
          line.push(next);
        }
        wires.push({ node: name, points: line.map((at) => pointOf(sheet, at)) });
      }
    };

    const own = [...new Set(sheet.pointsOf[node])].sort((a, b) => a - b);
    for (const at of own) {
      if (!isStop(at)) continue;
      follow(at);
      if (armsAt(at) > 0 && armsAt(at) + pinsAt(sheet, at, node) > 2) dots.push({ ...pointOf(sheet, at), node: name });
    }
    // What is left are closed loops without a join.
    for (const at of own) follow(at);
  }
  return { wires, dots };
}

const isLevel = (from: number, to: number, columns: number): boolean =>
  Math.floor(from / columns) === Math.floor(to / columns);

function pinsAt(sheet: Sheet, at: number, node: number): number {
  if (sheet.pins[at] !== node) return 0;
  const points = sheet.pointsOf[node]!;
  let count = 0;
  for (let k = 0; k < sheet.pinCounts[node]!; k++) count += Number(points[k] === at);
  return count;
}
