/** Plain data alike in value, whatever its identity. */
export function alike(a: unknown, b: unknown): boolean {
  if (a === b || Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every(
    (key) => Object.hasOwn(b, key) && alike((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
  );
}

/**
 * `thing` with the given fields; the same object when none of them differs in value, and a field that does not differ
 * keeps its identity. A field given as undefined is left alone; a negative zero becomes zero.
 */
export function withChanges<T extends object>(thing: T, changes: Partial<NoInfer<T>>): T {
  const differing = Object.entries(changes).filter(
    ([key, value]) => value !== undefined && !alike((thing as Record<string, unknown>)[key], value),
  );
  const plain = differing.map(([key, value]) => [key, value === 0 ? 0 : value]);
  return plain.length === 0 ? thing : { ...thing, ...Object.fromEntries(plain) };
}
