/** Number of parts between the nearest of `starts` and every node it reaches; nothing passes through `walls`. */
export function distancesFrom(
  parts: readonly { readonly nodes: readonly [string, string] }[],
  edges: readonly number[],
  starts: readonly string[],
  walls: ReadonlySet<string>,
): Map<string, number> {
  const next = new Map<string, string[]>();
  const join = (from: string, to: string): void => {
    const list = next.get(from);
    if (list) list.push(to);
    else next.set(from, [to]);
  };
  for (const index of edges) {
    const [a, b] = parts[index]!.nodes;
    join(a, b);
    join(b, a);
  }
  const distances = new Map(starts.map((node) => [node, 0]));
  const queue = [...distances.keys()];
  for (let at = 0; at < queue.length; at++) {
    const node = queue[at]!;
    if (walls.has(node)) continue;
    for (const neighbour of next.get(node) ?? []) {
      if (distances.has(neighbour)) continue;
      distances.set(neighbour, distances.get(node)! + 1);
      queue.push(neighbour);
    }
  }
  return distances;
}
