import type { Sheet } from './sheet.ts';

/** Nodes on the four steps around a point: left, right, up, down. The sheet keeps a blank rim, so all four exist. */
export const around = (sheet: Sheet, at: number): [number, number, number, number] => [
  sheet.rightward[at - 1]!,
  sheet.rightward[at]!,
  sheet.downward[at - sheet.columns]!,
  sheet.downward[at]!,
];

/** Whether `node` may run straight through a point without touching another node: at most square across its wire. */
export function mayPass(sheet: Sheet, node: number, at: number, isLevel: boolean): boolean {
  const { solid, pins, rightward, downward, columns } = sheet;
  if (solid[at] !== 0) return false;
  const pin = pins[at]!;
  if (pin !== 0 && pin !== node) return false;
  const [before, after] = isLevel ? [rightward[at - 1]!, rightward[at]!] : [downward[at - columns]!, downward[at]!];
  if ((before !== 0 && before !== node) || (after !== 0 && after !== node)) return false;
  const [one, other] = isLevel ? [downward[at - columns]!, downward[at]!] : [rightward[at - 1]!, rightward[at]!];
  const isForeign = (one !== 0 && one !== node) || (other !== 0 && other !== node);
  return !isForeign || (one === other && pin === 0);
}

/** Whether a point belongs to nobody but `node`: there it may end, turn or branch. */
export function isOwn({ solid, pins, rightward, downward, columns }: Sheet, node: number, at: number): boolean {
  if (solid[at] !== 0) return false;
  const [pin, left, right] = [pins[at]!, rightward[at - 1]!, rightward[at]!];
  const [up, down] = [downward[at - columns]!, downward[at]!];
  return (
    (pin === 0 || pin === node) &&
    (left === 0 || left === node) &&
    (right === 0 || right === node) &&
    (up === 0 || up === node) &&
    (down === 0 || down === node)
  );
}

/** Lays a wire along a path of neighbouring points if it touches no other node, symbol or text; says whether it did. */
export function layWire(sheet: Sheet, node: number, path: readonly number[]): boolean {
  const isLevel = (from: number, to: number): boolean => Math.abs(to - from) === 1;
  for (let k = 0; k < path.length; k++) {
    const at = path[k]!;
    const straight = k > 0 && k < path.length - 1 && isLevel(path[k - 1]!, at) === isLevel(at, path[k + 1]!);
    if (!(straight ? mayPass(sheet, node, at, isLevel(at, path[k + 1]!)) : isOwn(sheet, node, at))) return false;
  }
  for (let k = 1; k < path.length; k++) {
    const first = Math.min(path[k - 1]!, path[k]!);
    (isLevel(path[k - 1]!, path[k]!) ? sheet.rightward : sheet.downward)[first] = node;
  }
  for (const at of path) sheet.pointsOf[node]!.push(at);
  return true;
}

/** Takes off wire that leads nowhere: ends without a pin. */
export function pruneWires(sheet: Sheet): void {
  sheet.pointsOf.forEach((points, node) => {
    const queue = [...points];
    for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
      const arms = around(sheet, at).map((other) => other === node);
      if (sheet.pins[at] === node || arms.filter(Boolean).length !== 1) continue;
      const [left, right, up] = arms;
      if (left || right) sheet.rightward[left ? at - 1 : at] = 0;
      else sheet.downward[up ? at - sheet.columns : at] = 0;
      queue.push(left ? at - 1 : right ? at + 1 : up ? at - sheet.columns : at + sheet.columns);
    }
  });
}
