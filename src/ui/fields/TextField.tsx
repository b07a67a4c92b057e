import { useId } from 'react';
import type { Command } from '../../core/document/command.ts';
import type { Problem } from '../../core/messages/problem.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { dispatchHere } from './dispatchHere.ts';
import { FieldMessage } from './FieldMessage.tsx';
import { useWhileOpen } from './useWhileOpen.ts';
import './field-row.css';

/** A short text, changed when the field is left or Enter is pressed; Escape gives back what it was. */
export function TextField({
  label,
  value,
  command,
  placeholder = '',
  longest = 120,
}: {
  readonly label: string;
  readonly value: string;
  readonly command: (value: string) => Command;
  readonly placeholder?: string;
  readonly longest?: number;
}) {
  const store = useWorkbenchStore();
  const [draft, setDraft] = useWhileOpen<string | null>(null);
  const [problems, setProblems] = useWhileOpen<readonly Problem[]>([]);
  const messageId = useId();
  const commit = () => {
    if (draft === null) return;
    const text = draft.trim();
    const found = text === value ? [] : dispatchHere(store, command(text));
    setProblems(found);
    if (found.length === 0) setDraft(null);
  };
  return (
    <span className="text-field">
      <input
        className="text-field-input"
        aria-label={label}
        aria-invalid={problems.length > 0}
        aria-describedby={messageId}
        value={draft ?? value}
        placeholder={placeholder}
        maxLength={longest}
        onChange={(event) => {
          setDraft(event.target.value);
          setProblems([]);
        }}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit();
          if (event.key !== 'Escape' || draft === null) return;
          event.stopPropagation();
          setDraft(null);
          setProblems([]);
        }}
      />
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
