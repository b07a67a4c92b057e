import { editWording } from './document/edits.ts';
import { fileWording } from './document/files.ts';
import { referenceWording } from './document/references.ts';
import { valueWording } from './document/values.ts';
import type { WordingByCode } from './problem.ts';

/** The sentences of every `document.` code. */
export const documentWording: WordingByCode = { ...valueWording, ...referenceWording, ...editWording, ...fileWording };
