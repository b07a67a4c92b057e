import { useId } from 'react';
import type { Command } from '../../core/document/command.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import './field-row.css';

export interface Choice {
  readonly value: string;
  readonly words: string;
}

/** One of a few words, chosen in place. */
export function ChoiceField({
  name,
  label,
  value,
  choices,
  command,
}: {
  /** Shown before the choice. */
  readonly name: string;
  /** Accessible name where `name` alone does not say which thing is meant. */
  readonly label?: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly command: (value: string) => Command;
}) {
  const id = useId();
  const store = useWorkbenchStore();
  return (
    <div className="field-row">
      <label className="field-row-name" htmlFor={id}>
        {name}
      </label>
      <select
        id={id}
        className="field-row-choice"
        aria-label={label ?? name}
        value={value}
        onChange={(event) => store.getState().dispatch(command(event.target.value))}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
    </div>
  );
}
