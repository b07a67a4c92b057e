import type { Wall } from './cabinet.ts';

/** On a panel: from the lower left corner of its smallest upright rectangle, its outer face towards the reader. */
export type PanelPoint = readonly [acrossM: number, upM: number];

export interface PanelEdge {
  /** The wall it meets there; 'edge' for a board inside. */
  readonly meets: Wall | 'edge';
  readonly joint: 'runs-through' | 'ends-at' | 'mitre' | 'takes-step' | 'ends-in-step';
  /** Which way the edge runs on the panel. */
  readonly runs: 'across' | 'up';
  /** Of the edge on the outer face. */
  readonly lengthM: number;
  /** From the square cut; above 0 where the outer face is the larger one. */
  readonly bevelRad: number;
}

/** A step cut into the inner edge for another board. */
export interface PanelRebate {
  readonly meets: Wall;
  readonly depthM: number;
  /** Thickness of the board that it takes. */
  readonly widthM: number;
  /** Length of the step, the mean where its ends are bevelled; where two steps cross, one of them has the corner. */
  readonly runM: number;
  /** It does not run out at both ends of the panel. */
  readonly stopped: boolean;
}

export type PanelCutOut =
  | {
      readonly kind: 'driver';
      readonly id: string;
      readonly at: PanelPoint;
      readonly throughDiameterM: number;
      readonly recess: { readonly diameterM: number; readonly depthM: number } | null;
      readonly screws: { readonly circleDiameterM: number; readonly count: number } | null;
    }
  | { readonly kind: 'port-hole'; readonly id: string; readonly at: PanelPoint; readonly throughDiameterM: number }
  | {
      readonly kind: 'slot' | 'window';
      readonly id: string;
      /** Its centre. */
      readonly at: PanelPoint;
      readonly acrossM: number;
      readonly upM: number;
    };

export interface Panel {
  readonly id: string;
  readonly kind: 'wall' | 'divider' | 'brace' | 'port-board';
  /** Smallest rectangle that it is cut from, joints included: `lengthM` along the grain. */
  readonly lengthM: number;
  readonly widthM: number;
  readonly thicknessM: number;
  /** Which way the grain runs as the panel stands in the cabinet. Common practice, no source: up the walls, on over the top. */
  readonly grain: 'up' | 'across' | 'backwards';
  readonly shape: 'rectangle' | 'trapezoid';
  /** Corners of both faces, anticlockwise from the lower left; a bevelled edge makes them differ. */
  readonly outerFace: readonly PanelPoint[];
  readonly innerFace: readonly PanelPoint[];
  readonly edges: readonly PanelEdge[];
  readonly rebates: readonly PanelRebate[];
  readonly cutOuts: readonly PanelCutOut[];
  /** Wood in it, steps and windows taken out, holes in walls not, m³. */
  readonly woodM3: number;
}
