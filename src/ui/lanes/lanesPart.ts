import type { LaneLayout } from './laneLayout.ts';

/** What the arrangements of the lanes are given. */
export interface LanesPartProps {
  readonly layout: LaneLayout;
  readonly nodesNamed: boolean;
  /** The way whose driver's data sheet lies open. */
  readonly edited: string | null;
  readonly edit: (speakerId: string | null) => void;
  /** Opens the textbook sections for this speaker. */
  readonly startSection: (speakerId: string) => void;
}
