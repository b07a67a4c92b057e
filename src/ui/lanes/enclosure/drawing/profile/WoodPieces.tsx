import { hatch } from './hatch.ts';

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A board that is cut: its pieces of wood hatched, and its whole outline thin where it is open. */
export function WoodPieces({ whole, pieces }: { readonly whole: Rect; readonly pieces: readonly Rect[] }) {
  return (
    <g className="cabinet-brace">
      <rect className="cabinet-hidden-edge" {...whole} />
      {pieces.map((piece) => (
        <g key={`${piece.x} ${piece.y}`}>
          <rect className="cabinet-partition" {...piece} />
          <path className="cabinet-hatch" d={hatch(piece.x, piece.y, piece.width, piece.height)} />
        </g>
      ))}
    </g>
  );
}
