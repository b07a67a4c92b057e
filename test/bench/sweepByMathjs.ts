import { add, type Complex, complex, divide, lusolve, type Matrix, multiply, unaryMinus, zeros } from 'mathjs';

/** A plain element of a simulator's netlist. */
interface Element {
  readonly letter: string;
  readonly nodes: readonly [string, string];
  readonly value: number;
}

/** A plain netlist of R, L, C and one ideal source, with the unknowns of its modified nodal equations. */
export interface PlainNetlist {
  readonly elements: readonly Element[];
  /** Nodes in order of the unknowns; the source's current comes behind them. */
  readonly nodes: readonly string[];
}

/** Reads the elements of a netlist as `exportForSimulator` writes it. */
export function plainNetlist(text: string): PlainNetlist {
  const elements = text
    .split('\n')
    .filter((line) => /^[RLCV]/.test(line))
    .map((line): Element => {
      const [id = '', a = '', b = '', ...rest] = line.split(' ');
      return { letter: id.charAt(0), nodes: [a, b], value: Number(rest.at(-1)) };
    });
  const nodes = [...new Set(elements.flatMap(({ nodes: [a, b] }) => [a, b]))].filter((node) => node !== '0');
  return { elements, nodes };
}

/**
 * The modified nodal equations of a netlist at one frequency, built and solved with the library's own complex numbers
 * and matrices.
 */
export function solveByMathjs({ elements, nodes }: PlainNetlist, omega: number): Map<string, Complex> {
  const size = nodes.length + 1;
  const matrix = zeros(size, size) as Matrix;
  const right = zeros(size, 1) as Matrix;
  const enter = (i: number, j: number, value: Complex | number): void => {
    if (i >= 0 && j >= 0) matrix.set([i, j], add(matrix.get([i, j]), value));
  };
  for (const { letter, nodes: ends, value } of elements) {
    const [i, j] = [nodes.indexOf(ends[0]), nodes.indexOf(ends[1])];
    if (letter === 'V') {
      enter(i, nodes.length, 1);
      enter(nodes.length, i, 1);
      right.set([nodes.length, 0], complex(value, 0));
      continue;
    }
    const jOmega = complex(0, omega);
    const admittance =
      letter === 'R'
        ? complex(1 / value, 0)
        : letter === 'C'
          ? (multiply(jOmega, value) as Complex)
          : (divide(1, multiply(jOmega, value)) as Complex);
    enter(i, i, admittance);
    enter(j, j, admittance);
    enter(i, j, unaryMinus(admittance));
    enter(j, i, unaryMinus(admittance));
  }
  const solution = lusolve(matrix, right) as Matrix;
  return new Map(nodes.map((node, i) => [node, complex(solution.get([i, 0]))]));
}
