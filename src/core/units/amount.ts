/** Size in base SI units and the exponents of the dimensions; a plain number has none. */
export interface Amount {
  readonly size: number;
  readonly dimensions: readonly number[];
}

/** Why a text is no quantity; never leaves this room. */
export class Refusal extends Error {
  constructor(
    readonly code: 'units.not-understood' | 'units.mixed-units' | 'units.unknown-unit',
    readonly unit = '',
  ) {
    super(code);
  }
}

const LARGEST_EXPONENT = 6;

const combine = (a: Amount, b: Amount, sign: 1 | -1): readonly number[] =>
  Array.from(
    { length: Math.max(a.dimensions.length, b.dimensions.length) },
    (_, i) => (a.dimensions[i] ?? 0) + sign * (b.dimensions[i] ?? 0),
  );

export const plainAmount = (size: number): Amount => ({ size, dimensions: [] });
export const isPlain = (a: Amount): boolean => a.dimensions.every((e) => e === 0);
export const sameDimensions = (a: Amount, b: Amount): boolean => combine(a, b, -1).every((e) => e === 0);

const power = (a: Amount, b: Amount): Amount => {
  const e = b.size;
  if (!isPlain(b) || !Number.isInteger(e) || Math.abs(e) > LARGEST_EXPONENT) throw new Refusal('units.not-understood');
  return { size: a.size ** e, dimensions: a.dimensions.map((d) => d * e) };
};

/**
 * One step of arithmetic on amounts: `fn` is the operator's name in the parse tree. Sums need equal dimensions, exponents
 * are whole numbers up to 6. Throws a Refusal for anything else.
 *
 * Example: `operate('divide', [{ size: 6, dimensions: [0, 1] }, plainAmount(2)])` has size 3.
 */
export function operate(fn: string, [a, b]: readonly Amount[]): Amount {
  if (a !== undefined && b === undefined) {
    if (fn === 'unaryMinus') return { ...a, size: -a.size };
    if (fn === 'unaryPlus') return a;
  }
  if (a === undefined || b === undefined) throw new Refusal('units.not-understood');
  switch (fn) {
    case 'multiply':
      return { size: a.size * b.size, dimensions: combine(a, b, 1) };
    case 'divide':
      return { size: a.size / b.size, dimensions: combine(a, b, -1) };
    case 'pow':
      return power(a, b);
    case 'add':
    case 'subtract':
      if (!sameDimensions(a, b)) throw new Refusal('units.mixed-units');
      return { ...a, size: fn === 'add' ? a.size + b.size : a.size - b.size };
    default:
      throw new Refusal('units.not-understood');
  }
}
