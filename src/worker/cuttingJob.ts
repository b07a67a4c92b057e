import type { SheetLayout, SheetPart, StockSheet } from '../core/build/sheets/index.ts';
import type { Result } from '../core/messages/problem.ts';

/** Parts to lay out, one group for each thickness of board; plain data that can be posted. */
export interface CuttingJob {
  readonly groups: readonly (readonly SheetPart[])[];
  readonly stock: StockSheet;
  readonly kerfM: number;
  readonly trimM: number;
  readonly seed: number;
  readonly effort: number;
}

/**
 * What is heard of a job, in this order: a first layout of every group, then progress and better layouts of those that are not proved the
 * least, then `done`. `failed` comes alone, from where no layout can be made at all.
 */
export type CuttingAnswer =
  | { readonly kind: 'layout'; readonly group: number; readonly layout: Result<SheetLayout> }
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed' };
