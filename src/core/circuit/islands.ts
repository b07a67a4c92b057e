/** Which things hang together: a disjoint-set forest over names. */
export interface Islands {
  /** The name that stands for the island of `name`. */
  of(name: string): string;
  join(a: string, b: string): void;
}

/** An empty forest: every name is an island of its own until it is joined. */
export function islands(): Islands {
  const parent = new Map<string, string>();
  const of = (name: string): string => {
    let root = name;
    for (let up = parent.get(root); up !== undefined; up = parent.get(root)) root = up;
    if (root !== name) parent.set(name, root);
    return root;
  };
  const join = (a: string, b: string): void => {
    const rootA = of(a);
    const rootB = of(b);
    if (rootA !== rootB) parent.set(rootB, rootA);
  };
  return { of, join };
}
