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
}

export interface Wire {
  readonly node: string;
  /** Orthogonal: neighbours differ in x or in y only. */
  readonly points: readonly Point[];
}

/** A horizontal band of the drawing. `way` belongs to the speaker part `partId`; `shared` holds what several ways share. */
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
  readonly parts: readonly PlacedPart[];
  readonly wires: readonly Wire[];
  /** Joins of three or more wire ends. A crossing without a dot is no join. */
  readonly dots: readonly (Point & { readonly node: string })[];
  readonly lanes: readonly SchematicLane[];
}
