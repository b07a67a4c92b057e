/** Parts of one size to be cut. `lengthM` lies along the sheet's length (its grain) unless the part is turned. */
export interface SheetPart {
  readonly id: string;
  readonly lengthM: number;
  readonly widthM: number;
  readonly count: number;
  /** `along-length`: the part's length follows the grain, so it is never turned. */
  readonly grain: 'along-length' | 'any';
  readonly allowRotation: boolean;
}

/** Boards of one size; the grain runs along the length. */
export interface StockSheet {
  readonly lengthM: number;
  readonly widthM: number;
  readonly count: number | 'unlimited';
}

export interface CuttingProgress {
  readonly round: number;
  readonly rounds: number;
  readonly sheets: number;
  readonly lowerBound: number;
}

export interface CuttingOptions {
  /** Width of the saw's cut. */
  readonly kerfM: number;
  /** Taken off each of the four edges before anything else, the saw's cut included. */
  readonly trimM: number;
  readonly seed: number;
  /** Random restarts after the fixed rules; the same number gives the same layout. 2000 take about half a second for 20 parts. */
  readonly effort: number;
  readonly onProgress?: (progress: CuttingProgress) => void;
  /** Asked between restarts; true ends the search with the best layout so far. */
  readonly shouldStop?: () => boolean;
}

/** A rectangle on a sheet: x along its length, y along its width, from one corner of the untrimmed board. */
export interface SheetRectangle {
  readonly xM: number;
  readonly yM: number;
  /** Along the sheet's length. */
  readonly lengthM: number;
  /** Along the sheet's width. */
  readonly widthM: number;
}

export interface PlacedPart extends SheetRectangle {
  readonly partId: string;
  /** The part's own length lies along the sheet's width. */
  readonly rotated: boolean;
}

/**
 * One straight cut through the whole of one piece. `rip` runs along the sheet's length, `cross` along its width; `trim`
 * takes an edge of the board off, the saw standing outside the line. Any other cut takes the kerf beyond `atM`.
 */
export interface SheetCut {
  /** 1 for the first cut of the sheet. */
  readonly number: number;
  readonly kind: 'trim' | 'rip' | 'cross';
  /** Which turn of the work: cuts of one stage are all in one direction within a piece. 0 is trimming. */
  readonly stage: number;
  /** The piece that is cut, named by its number on the sheet: 0 is the board. */
  readonly piece: number;
  readonly from: SheetRectangle;
  /** The cut is the line x = `atM` or y = `atM`. */
  readonly axis: 'x' | 'y';
  /** What the fence is set to: size across the cut of the piece that is kept against it, the first of `leaves`. */
  readonly fenceM: number;
  /** Where that piece ends, on the sheet. */
  readonly atM: number;
  /** What lies on either side afterwards; null where the saw leaves nothing. */
  readonly leaves: readonly [number, number | null];
}

export interface SheetPlan {
  /** Which entry of the stock. */
  readonly stock: number;
  readonly lengthM: number;
  readonly widthM: number;
  readonly parts: readonly PlacedPart[];
  /** Largest first. */
  readonly offCuts: readonly SheetRectangle[];
  readonly cuts: readonly SheetCut[];
  /** Number of stages after trimming. */
  readonly stages: number;
}

export interface SheetLayout {
  readonly sheets: readonly SheetPlan[];
  /** 1 − area of the parts / area of the sheets used; kerf, trim and off-cuts all count as waste. */
  readonly wasteFraction: number;
  readonly partsAreaM2: number;
  readonly sheetsAreaM2: number;
  /** Of one sheet of each entry of the stock. */
  readonly sheetAreaM2: readonly number[];
  readonly largestOffCutM2: number;
  /** No layout needs fewer sheets than this. */
  readonly lowerBound: number;
  /** The number of sheets equals the bound: no guillotine layout needs fewer. */
  readonly provedOptimal: boolean;
  /** Restarts made, and whether `shouldStop` ended the search. */
  readonly rounds: number;
  readonly stopped: boolean;
}
