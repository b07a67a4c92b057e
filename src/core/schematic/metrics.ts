// Sizes of the drawing, in drawing units. Everything is a whole or half unit, so that wires meet on the half-unit grid.

/** A part is this long from pin to pin. */
export const partLength = 4;
/** What a symbol takes up across its axis. */
export const partAcross = 2;
/** Kept free for a value: about eight characters when a line of text is one unit high. */
export const valueWidth = 5;
/** Kept free for a part's name: about four characters. */
export const nameWidth = 2.5;
/** Kept free for the value beside a speaker or an amplifier. */
export const terminalValueWidth = 3.5;
/** Height kept free for one line of text. */
export const textHeight = 1;

/** From a horizontal part's axis to the far edge of its texts. */
export const horizontalReach = partAcross / 2 + textHeight;
/** Least distance of two column nodes with a horizontal part between them: its value and half a unit on each side. */
export const horizontalSlot = valueWidth + 1;
/** Wire between a rail and the first part of what hangs on it: clear of the names below the rail. */
export const lead = 1;
/** Wire between two parts in one stack. */
export const stackGap = 0.5;
/** Free space between the texts of two rows of parts, one above the other. */
export const rowGap = 0.5;
/** From one return rail of a lane to the next, with a part between them. */
export const railStep = 3;

/** The nearest half unit. */
export const toHalf = (x: number): number => Math.round(x * 2) / 2;
