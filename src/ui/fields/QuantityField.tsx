import { useId, useRef } from 'react';
import type { Command } from '../../core/document/command.ts';
import type { Problem } from '../../core/messages/problem.ts';
import { quantityText } from '../../core/units/formatQuantity.ts';
import type { QuantityKind } from '../../core/units/quantityKind.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { dispatchHere } from './dispatchHere.ts';
import { dragQuantity } from './dragQuantity.ts';
import { FieldMessage } from './FieldMessage.tsx';
import { QuantityEditor } from './QuantityEditor.tsx';
import { showInField } from './showInField.ts';
import { stepKeysOf } from './stepKeysOf.ts';
import { type Stepping, steppingOf } from './stepping.ts';
import { stepQuantity } from './stepQuantity.ts';
import { useDragGesture } from './useDragGesture.ts';
import { useHeldKeys } from './useHeldKeys.ts';
import { useWhileOpen } from './useWhileOpen.ts';
import './quantity-field.css';

export interface QuantityFieldProps {
  /** What it is, with the part's name: "C1 capacitance". */
  readonly label: string;
  readonly kind: QuantityKind;
  /** In the kind's inside unit; null: not stated. */
  readonly value: number | null;
  /** The edit of the document that sets it. */
  readonly command?: (value: number) => Command;
  /** In place of `command`, for a number that is no part of the document, such as a wish. */
  readonly keep?: (value: number) => void;
  /** Where the value may be left out: what an emptied field does. */
  readonly clear?: (() => Command) | undefined;
  /** Shown in place of a value that is not stated. */
  readonly absent?: string;
  readonly stepping?: Stepping;
  /** Bounds for arrow keys and dragging; typing may go beyond them and is then judged by the document. */
  readonly least?: number;
  readonly greatest?: number;
  /** Fixed unit in the metric system. */
  readonly metricUnit?: string;
  /** Added to the opened field's hint: "rated 5 W". */
  readonly note?: string;
  readonly className?: string;
}

const NONE: readonly Problem[] = [];

/**
 * A value that is edited where it stands: arrow keys step it, dragging sideways changes it, click, Enter or typing opens
 * a small field for numbers, units and arithmetic. Every change is a command; one drag or one held key is one undo step.
 */
export function QuantityField(props: QuantityFieldProps) {
  const { label, kind, value, metricUnit } = props;
  const stepping = props.stepping ?? steppingOf(kind);
  const store = useWorkbenchStore();
  const system = useWorkbench((s) => s.settings.units);
  const [opened, setOpened] = useWhileOpen<{ readonly text: string | null } | null>(null);
  const [refused, setRefused] = useWhileOpen(NONE);
  const valueRef = useRef<HTMLSpanElement>(null);
  const keys = useHeldKeys();
  const messageId = useId();

  const bounded = (next: number) =>
    Math.min(props.greatest ?? Number.POSITIVE_INFINITY, Math.max(props.least ?? Number.NEGATIVE_INFINITY, next));
  const apply = (next: number): readonly Problem[] => {
    props.keep?.(next);
    return props.command ? dispatchHere(store, props.command(next)) : NONE;
  };
  const send = (next: number) => setRefused(apply(bounded(next)));
  const drag = useDragGesture<number>({
    begin: () => value,
    move: (start, state) => send(dragQuantity(start, stepping, state, system)),
    tap: () => setOpened({ text: null }),
  });

  const onKeyDown = (event: React.KeyboardEvent) => {
    const step = stepKeysOf(event);
    if (step && value !== null) {
      event.preventDefault();
      keys.hold();
      send(stepQuantity(value, stepping, step, store.getState().settings.series, system));
    } else if (event.key === 'Escape') {
      setRefused(NONE);
    } else if (event.key === 'Enter' || event.key === 'F2') {
      event.preventDefault();
      setOpened({ text: null });
    } else if (/^[\d.,+\-(]$/.test(event.key) && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      setOpened({ text: event.key });
    } else if ((event.key === 'Backspace' || event.key === 'Delete') && props.clear) {
      event.preventDefault();
      setOpened({ text: '' });
    }
  };

  const shown = value === null ? null : showInField(value, kind, system, metricUnit);
  const text = shown ? quantityText(shown) : (props.absent ?? 'not stated');
  return (
    <span className={`quantity-field ${props.className ?? ''}`} data-open={opened ? '' : undefined}>
      <span
        ref={valueRef}
        role="spinbutton"
        tabIndex={0}
        className="quantity-field-value"
        aria-label={label}
        aria-valuenow={shown ? Number(shown.number.replace('−', '-')) : undefined}
        aria-valuetext={text}
        aria-invalid={refused.length > 0 || undefined}
        aria-describedby={refused.length > 0 ? messageId : undefined}
        data-absent={shown ? undefined : ''}
        onKeyDown={onKeyDown}
        onKeyUp={keys.release}
        onBlur={() => {
          keys.release();
          setRefused(NONE);
        }}
        {...drag}
      >
        {shown ? (
          <>
            <b>{shown.number}</b>
            {shown.unit === '' || shown.unit === '°' ? shown.unit : ` ${shown.unit}`}
          </>
        ) : (
          text
        )}
      </span>
      {opened ? (
        <QuantityEditor
          {...props}
          stepping={stepping}
          system={system}
          firstText={opened.text}
          bounded={bounded}
          apply={apply}
          close={(how) => {
            setOpened(null);
            setRefused(NONE);
            if (how === 'keyboard') valueRef.current?.focus();
          }}
        />
      ) : (
        <FieldMessage id={messageId} problems={refused} />
      )}
    </span>
  );
}
