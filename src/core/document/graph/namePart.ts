import type { Part } from '../../circuit/part.ts';
import type { NewPart } from '../command.ts';

/** A new part with the name and nodes that its place gives it. */
export const namePart = (part: NewPart, id: string, nodes: readonly [string, string]): Part => ({ ...part, id, nodes });
