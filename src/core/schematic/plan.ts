import type { PartKind } from '../circuit/part.ts';

/** Drawing units: a part is 4 long; wires run on whole or half units. The y axis points down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface TextAnchor extends Point {
  readonly align: 'start' | 'middle' | 'end';
  /** Space kept free for the text, in drawing units; the text's baseline middle is the anchor. */
  readonly width: number;
}

export interface PlacedPart {
  readonly partId: string;
  readonly kind: PartKind;
  /** Centre of the symbol. */
  readonly centre: Point;
  readonly orientation: 'horizontal' | 'vertical';
  /** Where the part's own nodes[0] and nodes[1] meet the wires. */
  readonly pins: readonly [Point, Point];
  readonly valueAnchor: TextAnchor;
  readonly nameAnchor: TextAnchor;
  /** Index of the lane it belongs to. */
  readonly lane: number;
}

export interface Wire {
  readonly node: string;
  /** Orthogonal: neighbours differ in x or in y only. */
  readonly points: readonly Point[];
}

/**
 * A horizontal band of the drawing. `way` belongs to the speaker part `partId`; `shared` spans the ways and is filled in
 * the trunk, left of `trunkWidth`, and by links between ways; `loose` at the bottom holds what no amplifier or speaker
 * belongs to. Order in the plan: ways from top to bottom, then shared, then loose.
 */
export interface SchematicLane {
  readonly kind: 'way' | 'shared' | 'loose';
  readonly partId: string | null;
  readonly top: number;
  readonly bottom: number;
}

/** A circuit as a plain drawing plan. Nothing in it depends on colours, fonts or the screen. */
export interface SchematicPlan {
  readonly width: number;
  readonly height: number;
  /**
   * Left of this x stands the trunk, across all way lanes: amplifier channels, terminal jumpers, parts that several ways
   * share. All way lanes begin here.
   */
  readonly trunkWidth: number;
  /** Axis of every way's speaker; to its right stand only the speakers' texts and the bus that joins the returns. */
  readonly speakerX: number;
  readonly parts: readonly PlacedPart[];
  readonly wires: readonly Wire[];
  /** Joins of three or more wire ends. A crossing without a dot is no join. */
  readonly dots: readonly (Point & { readonly node: string })[];
  readonly lanes: readonly SchematicLane[];
  /** Ids of parts drawn as links across, outside what series and parallel joins can say; the next drawing keeps them so. */
  readonly links: readonly string[];
  /** Pairs of nodes between which a part was taken out and nothing put in: the next drawing keeps the place free. */
  readonly openings: readonly (readonly [string, string])[];
}
