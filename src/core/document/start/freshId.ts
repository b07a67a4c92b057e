/** The first of prefix-1, prefix-2 ... that no thing has. */
export function freshId(prefix: string, things: readonly { readonly id: string }[]): string {
  const taken = new Set(things.map((thing) => thing.id));
  let k = 1;
  while (taken.has(`${prefix}-${k}`)) k++;
  return `${prefix}-${k}`;
}
