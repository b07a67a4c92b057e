import type { Problem } from '../core/messages/problem.ts';

/** What storage has to say: it stays while edits go on, until it is dismissed or over. */
const lasting = new Set([
  'document.stored-damaged',
  'document.stored-newer',
  'document.storage-unreadable',
  'document.save-failed',
  'document.other-window',
]);

export const isLasting = (problem: Problem): boolean => lasting.has(problem.code);

/** The refusal after a success: the same list where nothing in it is over. */
export const afterSuccess = (refusal: readonly Problem[]): readonly Problem[] =>
  refusal.every(isLasting) ? refusal : refusal.filter(isLasting);

/** The refusal after another one: new problems first. */
export const afterRefusal = (refusal: readonly Problem[], problems: readonly Problem[]): readonly Problem[] => [
  ...problems,
  ...refusal.filter(isLasting),
];
