import type { Command } from '../../../../../../core/document/command.ts';
import type { Enclosure } from '../../../../../../core/document/schema.ts';
import type { CabinetDrawing, Point } from '../../cabinetDrawing.ts';

/** A dimension with the places where its value may stand: the middle of the value, and the lines that belong to it there. */
export interface DimensionField {
  readonly key: string;
  readonly label: string;
  readonly kind: 'length' | 'angle';
  readonly value: number;
  readonly least?: number;
  readonly greatest?: number;
  readonly command: (value: number) => Command;
  readonly places: readonly (Point & { readonly line: string })[];
  readonly must?: boolean;
  /** Its value hides what it stands on. */
  readonly backed?: boolean;
  /** Which edge of the value the place is: its middle, unless said. */
  readonly anchor?: 'right' | 'left';
}

/** What the dimensions of a drawing are made from. */
export interface Drawn {
  readonly drawing: CabinetDrawing;
  readonly enclosure: Enclosure;
  readonly typeScale: number;
}

/** From the foot of the views to the middle of the values in the first row, and from there to the second. */
export const BELOW_PX = 27;
export const ROW_PX = 26;
/** Shortest outside size that arrow keys reach. */
export const LEAST_M = 0.05;
