import type { PartKind } from '../core/circuit/part.ts';

/**
 * A circuit symbol as SVG path data in drawing units around its centre, lying level, pins at (-2, 0) and (2, 0) with the
 * first pin at the left. Turned by +90° for an upright part, its upper side then looks to the right and its first pin up.
 */
export interface SymbolPath {
  /** To be stroked, not filled. */
  readonly outline: string;
  /** To be filled with the colour of the stroke; empty where there is nothing. */
  readonly solid: string;
}

const drawn = (outline: string, solid = ''): SymbolPath => ({ outline, solid });
const plusMark = (x: number, y: number): string => `M${x - 0.25} ${y}h.5M${x} ${y - 0.25}v.5`;

/** Rectangle (in the manner of IEC 60617). */
export const resistorSymbol = (): SymbolPath => drawn('M-2 0H-1M1 0H2M-1 -.4H1V.4H-1Z');

const windings = 'M-2 0H-1.2a.3 .3 0 0 1 .6 0a.3 .3 0 0 1 .6 0a.3 .3 0 0 1 .6 0a.3 .3 0 0 1 .6 0H2';
/** Row of half circles (in the manner of IEC 60617). */
export const inductorSymbol = (): SymbolPath => drawn(windings);
/** The same with a bar for the core. */
export const coredInductorSymbol = (): SymbolPath => drawn(`${windings}M-1.2 -.6H1.2`);

/** Two bars (in the manner of IEC 60617). */
export const capacitorSymbol = (): SymbolPath => drawn('M-2 0H-.18M.18 0H2M-.18 -.75V.75M.18 -.75V.75');

const ring = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
/** Removable link: two terminals and the strap between them. */
export const jumperSymbol = (): SymbolPath => drawn(`M-2 0H-1.2${ring(-1, 0, 0.2)}M-.8 0H.8${ring(1, 0, 0.2)}M1.2 0H2`);

/** Rectangle with a cone (in the manner of IEC 60617), plus at the first pin unless `isReversed`. */
export const speakerSymbol = (isReversed = false): SymbolPath =>
  drawn(
    `M-2 0H-.7M.7 0H2M-.7 -.35H.7V.35H-.7ZM-.7 -.35L-1.3 -1H1.3L.7 -.35${plusMark(isReversed ? 1.45 : -1.45, 0.6)}`,
  );

/** Amplifier channel seen as a source: a triangle in a square, plus at the first pin unless `isReversed`. */
export const amplifierSymbol = (isReversed = false): SymbolPath =>
  drawn(`M-2 0H-.9M.9 0H2M-.9 -.9H.9V.9H-.9ZM-.5 .45H.5L0 -.45Z${plusMark(isReversed ? 1.45 : -1.45, 0.6)}`);

/** Open terminal, its wire coming from the left: centre of the ring at (0, 0). */
export const terminalSymbol = (): SymbolPath => drawn(ring(0, 0, 0.2));

/** Common return, its wire coming from above at (0, 0). */
export const returnSymbol = (): SymbolPath => drawn('M0 0V.5', 'M-.7 .5H.7V.65H-.7Z');

/** The symbol of a part; `isReversed` where its first pin lies to the right or below, `hasCore` for a cored inductor. */
export function symbolOf(kind: PartKind, isReversed = false, hasCore = false): SymbolPath {
  switch (kind) {
    case 'resistor':
      return resistorSymbol();
    case 'inductor':
      return hasCore ? coredInductorSymbol() : inductorSymbol();
    case 'capacitor':
      return capacitorSymbol();
    case 'jumper':
      return jumperSymbol();
    case 'speaker':
      return speakerSymbol(isReversed);
    case 'amplifier':
      return amplifierSymbol(isReversed);
  }
}
