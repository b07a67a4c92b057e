import { fail, type Problem, problem, type Result } from '../core/messages/problem.ts';

export type MaybeLater<T> = T | Promise<T>;

/**
 * The answer of a function that computes or draws, now or later; a fault inside it becomes a Problem of the given code
 * and is handed to `report`, so that an edit never fails because its picture did.
 */
export function answered<T>(
  code: string,
  report: (fault: unknown) => void,
  ask: () => MaybeLater<Result<T>>,
): MaybeLater<Result<T>> {
  const asProblem = (fault: unknown): Result<T> => {
    report(fault);
    return fail(faultProblem(code, fault));
  };
  try {
    const answer = ask();
    return answer instanceof Promise ? answer.catch(asProblem) : answer;
  } catch (fault) {
    return asProblem(fault);
  }
}

export const faultProblem = (code: string, fault: unknown): Problem =>
  problem(code, { kind: 'document' }, { detail: fault instanceof Error ? fault.message : String(fault) });
