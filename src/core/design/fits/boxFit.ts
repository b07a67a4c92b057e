import type { Estimate } from '../../math/index.ts';
import type { Finding } from '../../messages/problem.ts';
import type { BoxLoss } from './boxModel.ts';
import type { DriverSpread } from './boxSearch.ts';
import type { Channel } from './impedanceFit.ts';

export interface BoxFitOptions {
  readonly kind: 'vented' | 'closed';
  readonly spread: DriverSpread;
  readonly leadOhm: number;
  /** The box is stuffed or lined: more absorption is usual. */
  readonly filled: boolean;
}

export interface BoxFit {
  readonly kind: 'vented' | 'closed';
  /** Tuning of a vented box, resonance of a closed one with its driver, Hz. */
  readonly tuningHz: Estimate;
  /** Compliance of the driver over that of the box. */
  readonly alpha: Estimate;
  /** What the air acts like, m³: the net volume of an empty box, more than that of a filled one. */
  readonly apparentM3: Estimate;
  /** The fewest losses that explain the data, Q at `tuningHz`; a small further one may hide in them. null: on a bound of the search. */
  readonly losses: readonly { readonly loss: BoxLoss; readonly q: Estimate | null }[];
  /** All together; null where no loss is seen. */
  readonly totalQ: Estimate | null;
  /** False where another set of losses explains the data nearly as well, so that only the total is known. */
  readonly separated: boolean;
  /** How likely each loss belongs to the set, by Schwarz's weights over all sets, 0 to 1. */
  readonly lossWeights: Readonly<Record<BoxLoss, number>>;
  /** Moving mass in the box over that in free air. */
  readonly massRatio: Estimate;
  readonly channels: readonly Channel[];
  readonly findings: readonly Finding[];
}
