import type { LineStyle } from '../../plot/index.ts';

/** One curve of a picture, in the units of its axis. */
export interface PictureCurve {
  /** Stable over edits: `sum`, `cone:LS1`, `port:P1`, `kept:...`, `curve:...`. */
  readonly id: string;
  /** Stands beside the curve, and in the head line too unless a shorter one is given. */
  readonly name: string;
  readonly shortName?: string;
  /** false: its name does not stand beside it, since another curve of the same kind bears it. */
  readonly named?: boolean;
  readonly frequenciesHz: ArrayLike<number>;
  readonly values: ArrayLike<number>;
  readonly style: LineStyle;
  readonly axis: 'left' | 'right';
  /** Speaker part in whose lane this curve belongs; null for what belongs to all. */
  readonly speakerId: string | null;
  /** 360 for a wrapped angle in degrees: a jump over half of it is drawn as a gap. */
  readonly period?: number;
  /** What the head line reads out at the cursor; kept and measured curves may be left out there. */
  readonly read: boolean;
}

/** A level that means something: a limit that must not be passed, or a mark for guidance. */
export interface PictureLine {
  readonly id: string;
  readonly value: number;
  readonly label: string;
  readonly kind: 'limit' | 'guide';
  /** CSS variable of its colour. */
  readonly colour: string;
}

export interface PictureAxis {
  /** What is shown, in which unit and under which conditions. */
  readonly title: string;
  /** Unit after a value that is read out, with its leading space. */
  readonly unit: string;
  readonly decimals: number;
  /** Range that fits the curves; the plot keeps its present one while this is near. */
  readonly range: readonly [number, number];
  /** Steps between lines to choose from, where the usual 1, 2, 5 will not do. */
  readonly steps?: readonly number[];
}

/** All that one plot shows at one moment: plain data, made by a view and painted by `CurvePlot`. */
export interface Picture {
  readonly left: PictureAxis;
  readonly right: PictureAxis | null;
  /** Painted in this order: the last is on top. */
  readonly curves: readonly PictureCurve[];
  readonly lines: readonly PictureLine[];
}
