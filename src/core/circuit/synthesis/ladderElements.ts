/** One element of a ladder from the source to the load: a coil in series or a capacitor across. */
export interface LadderElement {
  readonly kind: 'series-inductor' | 'shunt-capacitor';
  /** Henry or farad. */
  readonly value: number;
}

/**
 * The lossless ladder between an ideal voltage source and a load resistance whose response is 1 / D(s/ω), series coil
 * first; with 1 ohm and 1 rad/s the normalised elements of filter tables. Seen from
 * the load with the source shorted, the ladder is the quotient of D's even and odd part; its continued fraction gives the
 * elements from the load backwards.
 * For a polynomial whose roots all lie on the left; throws where an element is not positive.
 * Source: L. Weinberg, Network Analysis and Synthesis, 1962, chapter on singly terminated ladders (from memory).
 * @example ladderElements([1, Math.SQRT2, 1], 1, 1) // L 1.4142, C 0.7071
 */
export function ladderElements(denominator: readonly number[], loadOhm: number, cornerOmega: number): LadderElement[] {
  const order = denominator.length - 1;
  const part = (parity: number): number[] => denominator.map((c, k) => (k % 2 === parity ? c : 0));
  let [upper, lower] = [part(order % 2), part(1 - (order % 2))];
  const fromLoad: number[] = [];
  for (let degree = order; degree >= 1; degree--) {
    const quotient = upper[degree]! / lower[degree - 1]!;
    if (!(quotient > 0)) throw new RangeError('This polynomial is not that of a passive ladder.');
    fromLoad.push(quotient);
    const rest = upper.map((c, k) => (k === degree ? 0 : c - quotient * (lower[k - 1] ?? 0)));
    [upper, lower] = [lower, rest];
  }
  return fromLoad.toReversed().map((value, i) => {
    const isSeries = i % 2 === 0;
    return {
      kind: isSeries ? 'series-inductor' : 'shunt-capacitor',
      value: isSeries ? (value * loadOhm) / cornerOmega : value / (loadOhm * cornerOmega),
    };
  });
}
