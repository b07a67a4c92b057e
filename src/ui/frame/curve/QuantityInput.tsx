import { useId, useState } from 'react';
import { word } from '../../../core/messages/word.ts';
import { formatInUnit } from '../../../core/units/formatQuantity.ts';
import { parseQuantity } from '../../../core/units/parseQuantity.ts';
import type { QuantityKind } from '../../../core/units/quantityKind.ts';

/** A quantity of a form that is not an edit yet: read when it is left, with its unit or in the one that stands beside it. */
export function QuantityInput({
  label,
  kind,
  unit,
  value,
  onValue,
}: {
  label: string;
  kind: QuantityKind;
  unit: string;
  value: number;
  onValue(value: number): void;
}) {
  const [text, setText] = useState(formatInUnit(value, kind, unit, 4).number);
  const [fault, setFault] = useState<string | null>(null);
  const faultId = useId();
  const read = async (): Promise<void> => {
    const result = await parseQuantity(text, kind, unit);
    const problem = result.ok ? undefined : result.problems[0];
    setFault(problem ? word(problem).sentence : result.ok && result.value <= 0 ? 'This must be above zero.' : null);
    if (!result.ok || result.value <= 0) return;
    setText(formatInUnit(result.value, kind, unit, 4).number);
    onValue(result.value);
  };
  return (
    <label className="curve-quantity">
      <span className="frame-soft">{label}</span>{' '}
      <span>
        <input
          value={text}
          size={7}
          aria-invalid={fault !== null}
          aria-describedby={faultId}
          onChange={(event) => setText(event.target.value)}
          onBlur={() => void read()}
        />{' '}
        {unit}
      </span>
      <span id={faultId} className="curve-fault">
        {fault}
      </span>
    </label>
  );
}
