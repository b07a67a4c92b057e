import type * as z from 'zod/mini';
import type { Place, Problem } from '../../messages/problem.ts';
import { issueProblem } from './issueProblem.ts';

/**
 * What is wrong with the values of one thing of the document by its schema; empty when nothing is.
 * @example shapeProblems(partSchema, part, { kind: 'part', id: part.id })
 */
export function shapeProblems(schema: z.ZodMiniType, value: unknown, place: Place): readonly Problem[] {
  const result = schema.safeParse(value);
  return result.success ? [] : result.error.issues.map((issue) => issueProblem(issue, value, place));
}
