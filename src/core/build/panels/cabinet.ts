// The cabinet as wood: plain SI data. Origin at the bottom centre of the outer front, x to the listener's right, y up, z
// towards the listener, so that all wood has z ≤ 0. `left` is at negative x.

export const WALLS = ['front', 'back', 'left', 'right', 'top', 'bottom'] as const;
export type Wall = (typeof WALLS)[number];
export type Axis = 'x' | 'y' | 'z';
export type Range = readonly [lowM: number, highM: number];

export const EDGES = [
  'front-left',
  'front-right',
  'front-top',
  'front-bottom',
  'back-left',
  'back-right',
  'back-top',
  'back-bottom',
  'left-top',
  'left-bottom',
  'right-top',
  'right-bottom',
] as const;
/** Two walls that meet. */
export type Edge = (typeof EDGES)[number];

/**
 * How two walls meet. `butt`: one runs through to the outside, the other ends at its inner face. `mitre`: the cut runs from the outer to
 * the inner corner (45° for equal boards). `rebate`: a step `depthM` deep, as wide as the other board is thick, is cut into the
 * inner edge of `cutInto`, which runs through, and the other board ends in it. Rebates need square edges.
 */
export type Joint =
  | { readonly kind: 'butt'; readonly through: Wall }
  | { readonly kind: 'mitre' }
  | { readonly kind: 'rebate'; readonly cutInto: Wall; readonly depthM: number };

/**
 * Width (of the front), height and depth (at the bottom), outside or inside. `backWidthM` differs from `widthM` in a cabinet that is a
 * trapezoid seen from above; the front leans back by `slopeRad` from the vertical. Inside: width at the lower inner edge of front
 * and of back, depth along the inner bottom.
 */
export interface CabinetSize {
  readonly measured: 'outside' | 'inside';
  readonly widthM: number;
  readonly backWidthM: number;
  readonly heightM: number;
  readonly depthM: number;
  readonly slopeRad: number;
}

/**
 * A board that parts a space in two: the slab from `atM` to `atM + thicknessM` on an axis, right across the space. The first space
 * is `inside`; `below` and `above` name what it makes (lower and higher coordinate), and later dividers may part those.
 */
export interface Divider {
  readonly id: string;
  readonly parts: string;
  readonly axis: Axis;
  readonly atM: number;
  readonly thicknessM: number;
  readonly below: string;
  readonly above: string;
}

/** The name of the whole inner space before any divider. */
export const WHOLE_INSIDE = 'inside';

/** A board inside a space that does not part it: right across, or limited by `spanM`, with rectangular windows. */
export interface CabinetBrace {
  readonly id: string;
  readonly chamberId: string;
  readonly axis: Axis;
  readonly atM: number;
  readonly thicknessM: number;
  readonly spanM: Partial<Record<Axis, Range>>;
  /** Each a range on the two other axes. */
  readonly windowsM: readonly Partial<Record<Axis, Range>>[];
}

/**
 * Where on the outer face of a wall. Front and back: `acrossM` is x, `upM` goes up the face from its lower edge. Left and right: `acrossM`
 * goes backwards along the face from its front edge at the bottom, `upM` is y. Top and bottom: `acrossM` is x, `upM` goes backwards from z = 0.
 */
export interface WallPoint {
  readonly wall: Wall;
  readonly acrossM: number;
  readonly upM: number;
}

export interface CabinetDriver {
  readonly id: string;
  readonly chamberId: string;
  readonly at: WallPoint;
  readonly cutOutDiameterM: number;
  /** Outer diameter of its frame. */
  readonly frameDiameterM: number;
  /** Depth of the step that the frame lies in; 0: on the surface. */
  readonly recessDepthM: number;
  /** Diameter of that step: the frame with its play. */
  readonly recessDiameterM: number;
  readonly screwCircleDiameterM: number | null;
  readonly screwCount: number;
  /** From the underside of the frame to the back of the magnet. */
  readonly depthM: number;
  readonly magnetDiameterM: number;
  /** Height of the magnet, that is how far it reaches forward from the back of the driver. */
  readonly magnetHeightM: number;
  /** Air that it takes from its chamber. */
  readonly displacedM3: number;
}

export type PortWall = 'top' | 'bottom' | 'left' | 'right';
export type CabinetPortShape =
  | { readonly kind: 'round'; readonly boreDiameterM: number; readonly wallM: number }
  /** `sharedWalls`: sides of the slot that are a wall of the cabinet; the others are boards of `wallM`. */
  | {
      readonly kind: 'slot';
      readonly widthM: number;
      readonly heightM: number;
      readonly wallM: number;
      readonly sharedWalls: readonly PortWall[];
    };

/** A straight port square to its wall; `lengthM` from the outer face. Several equal ones are several entries. */
export interface CabinetPort {
  readonly id: string;
  readonly chamberId: string;
  readonly at: WallPoint;
  readonly shape: CabinetPortShape;
  readonly lengthM: number;
}

/** Anything else that takes air: a crossover board, a terminal cup, a handle. */
export interface Contents {
  readonly id: string;
  readonly chamberId: string;
  readonly volumeM3: number;
  /** Braces of which only the volume is known. */
  readonly isBrace?: boolean;
}

export interface Cabinet {
  readonly size: CabinetSize;
  readonly thicknessM: Readonly<Record<Wall, number>>;
  readonly joints: Readonly<Record<Edge, Joint>>;
  readonly dividers: readonly Divider[];
  readonly braces: readonly CabinetBrace[];
  readonly drivers: readonly CabinetDriver[];
  readonly ports: readonly CabinetPort[];
  readonly contents: readonly Contents[];
}
