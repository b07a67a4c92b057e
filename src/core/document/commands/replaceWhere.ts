/** The list with the entries that `matches` picks replaced; the same list when nothing was replaced by another thing. */
export function replaceWhere<T>(list: readonly T[], matches: (entry: T) => boolean, replace: (entry: T) => T): T[] {
  let differs = false;
  const replaced = list.map((entry) => {
    const next = matches(entry) ? replace(entry) : entry;
    if (next !== entry) differs = true;
    return next;
  });
  return differs ? replaced : (list as T[]);
}
