import type { Branch } from '../circuit/index.ts';

const memory = new WeakMap<
  object,
  { readonly depends: readonly (number | undefined)[]; readonly branches: readonly Branch[] }
>();

/**
 * Branches of a piece of the model, the same objects while the piece is the same and so are the numbers they depend on besides: a
 * solver that meets them again takes over their tables.
 */
export function keptBranches(
  piece: object,
  depends: readonly (number | undefined)[],
  make: () => readonly Branch[],
): readonly Branch[] {
  const known = memory.get(piece);
  if (known?.depends.every((value, i) => value === depends[i])) return known.branches;
  const branches = make();
  memory.set(piece, { depends, branches });
  return branches;
}
