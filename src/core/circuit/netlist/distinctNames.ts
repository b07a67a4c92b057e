/**
 * A name for everything that stays distinct where case does not count: the wish itself where it is free, else with the
 * first number behind it that makes it so. The same key always gets the same name.
 */
export function distinctNames(taken: readonly string[] = []): (key: string, wish: string) => string {
  const given = new Map<string, string>();
  const used = new Set(taken.map((name) => name.toLowerCase()));
  return (key, wish) => {
    const known = given.get(key);
    if (known !== undefined) return known;
    let name = wish;
    for (let n = 2; used.has(name.toLowerCase()); n++) name = `${wish}_${n}`;
    used.add(name.toLowerCase());
    given.set(key, name);
    return name;
  };
}
