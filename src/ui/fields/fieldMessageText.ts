import type { Problem } from '../../core/messages/problem.ts';
import { word } from '../../core/messages/word.ts';

/** The first problem in words, sentence and remedy; empty when there is none. */
export function fieldMessage(problems: readonly Problem[]): string {
  const first = problems[0];
  if (!first) return '';
  const { sentence, remedy } = word(first);
  return `${sentence} ${remedy}`.trim();
}
