import { useId } from 'react';
import type { Choice as Option } from '../../../fields/ChoiceField.tsx';

/** One of a few words for a form that is no part of the document. */
export function Choice({
  name,
  value,
  choices,
  choose,
}: {
  readonly name: string;
  readonly value: string;
  readonly choices: readonly Option[];
  readonly choose: (value: string) => void;
}) {
  const id = useId();
  return (
    <div className="field-row">
      <label className="field-row-name" htmlFor={id}>
        {name}
      </label>
      <select id={id} className="field-row-choice" value={value} onChange={(event) => choose(event.target.value)}>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
    </div>
  );
}
