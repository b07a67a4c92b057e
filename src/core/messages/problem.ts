/** Where something is: the kind of thing and, where there is one, its id, line of a text or field of a form. */
export interface Place {
  readonly kind:
    | 'part'
    | 'node'
    | 'driver'
    | 'mount'
    | 'chamber'
    | 'port'
    | 'radiator'
    | 'brace'
    /** A line of the cabinet, `line` being one of a text. */
    | 'duct'
    | 'curve'
    | 'file'
    | 'line'
    | 'field'
    | 'document';
  readonly id?: string;
  /** Line number of a text, counted from 1. */
  readonly line?: number;
  readonly field?: string;
}

/** Numbers stay SI; the sentence converts. */
export type ProblemValues = Readonly<Record<string, string | number>>;

/** An expected failure: a stable code, its values and its place. `messages` words the sentence and the remedy. */
export interface Problem {
  readonly code: string;
  readonly place: Place;
  readonly values: ProblemValues;
}

/** A flaw of the design (not a failure): the same shape with a severity. `danger` can hurt a part or a person. */
export interface Finding extends Problem {
  readonly severity: 'danger' | 'warning' | 'note';
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export const succeed = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = <T>(...problems: Problem[]): Result<T> => ({ ok: false, problems });
export const problem = (code: string, place: Place, values: ProblemValues = {}): Problem => ({ code, place, values });

/** A worded problem: one sentence that says what is wrong and where, and one that says what to do. */
export interface Wording {
  readonly sentence: string;
  readonly remedy: string;
}
export type WordingByCode = Readonly<Record<string, (values: ProblemValues, place: Place) => Wording>>;
