/**
 * What a kept state is called: after the last edit, which is what sets it apart, or by a number; never like another one.
 * Example: `keptName('C1 6.8 µF', [])` is `C1 6.8 µF`; `keptName(null, ['state 1'])` is `state 2`.
 */
export function keptName(lastEdit: string | null, taken: readonly string[]): string {
  const wanted = lastEdit?.slice(0, 100) ?? '';
  if (wanted !== '' && !taken.includes(wanted)) return wanted;
  const stem = wanted === '' ? 'state' : wanted;
  for (let number = wanted === '' ? 1 : 2; ; number++) {
    const name = `${stem} ${number}`;
    if (!taken.includes(name)) return name;
  }
}
