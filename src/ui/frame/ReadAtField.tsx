import { useEffect, useState } from 'react';
import { word } from '../../core/messages/word.ts';
import { parseQuantity } from '../../core/units/parseQuantity.ts';
import { type CursorPin, DOMAIN_HZ, frequencyText } from '../plots/index.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import './ReadAtField.css';

/** A frequency to type: the cursor of all plots goes there and stays until it is cleared. */
export function ReadAtField({ pin }: { pin: CursorPin }) {
  const store = useWorkbenchStore();
  const shown = pin.hz === null ? '' : frequencyText(pin.hz);
  const [text, setText] = useState(shown);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => setText(shown), [shown]);
  const take = (hz: number | null): void => {
    setFault(null);
    pin.set(hz);
    store.getState().setCursor(hz);
  };
  const read = async (): Promise<void> => {
    if (text.trim() === '') return take(null);
    if (text === shown) return;
    const result = await parseQuantity(text, 'frequency', 'Hz');
    const problem = result.ok ? undefined : result.problems[0];
    if (problem) return setFault(word(problem).sentence);
    if (!result.ok) return;
    if (result.value < DOMAIN_HZ[0] || result.value > DOMAIN_HZ[1])
      return setFault('The plots reach from 20 Hz to 20 kHz.');
    take(result.value);
  };
  return (
    <span className="read-at">
      <label className="read-at-label">
        read at{' '}
        <input
          className="read-at-input"
          data-testid="read-at"
          value={text}
          size={8}
          placeholder="1 kHz"
          autoComplete="off"
          spellCheck={false}
          aria-invalid={fault !== null}
          onChange={(event) => setText(event.target.value)}
          onBlur={() => void read()}
          onKeyDown={(event) => {
            if (event.key === 'Enter') void read();
            if (event.key === 'Escape') {
              setText('');
              take(null);
            }
          }}
        />
      </label>
      {fault !== null && (
        <span className="read-at-fault" role="alert">
          {fault}
        </span>
      )}
    </span>
  );
}
