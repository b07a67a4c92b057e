import type { Problem } from '../../core/messages/problem.ts';
import { fieldMessage } from './fieldMessageText.ts';

/** The sentence beside a field that was refused; nothing when all is well. */
export function FieldMessage({ id, problems }: { readonly id: string; readonly problems: readonly Problem[] }) {
  const text = fieldMessage(problems);
  if (text === '') return null;
  return (
    <span id={id} role="alert" className="field-message">
      {text}
    </span>
  );
}
