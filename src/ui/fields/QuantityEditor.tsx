import { useId, useLayoutEffect, useRef, useState } from 'react';
import type { Problem, Result } from '../../core/messages/problem.ts';
import { quantityText } from '../../core/units/formatQuantity.ts';
import { parseQuantity } from '../../core/units/parseQuantity.ts';
import { parseQuantityNow } from '../../core/units/parseQuantityNow.ts';
import type { UnitSystem } from '../../core/units/quantityKind.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { bareUnit } from './bareUnit.ts';
import { dispatchHere } from './dispatchHere.ts';
import { editorHint } from './editorHint.ts';
import { FieldMessage } from './FieldMessage.tsx';
import { placeInPage } from './placeInPage.ts';
import type { QuantityFieldProps } from './QuantityField.tsx';
import { fieldUnit, showInField } from './showInField.ts';
import { stepKeysOf } from './stepKeysOf.ts';
import type { Stepping } from './stepping.ts';
import { stepQuantity } from './stepQuantity.ts';

export interface QuantityEditorProps extends QuantityFieldProps {
  readonly stepping: Stepping;
  readonly system: UnitSystem;
  /** What was typed to open it; null: the present value, selected. */
  readonly firstText: string | null;
  readonly bounded: (value: number) => number;
  readonly apply: (value: number) => readonly Problem[];
  readonly close: (how: 'keyboard' | 'elsewhere') => void;
}

/** The opened field of a value: it lies over the value itself, says what that was and how it steps. */
export function QuantityEditor(props: QuantityEditorProps) {
  const { kind, value, apply, clear, system, metricUnit, stepping, bounded, close, firstText } = props;
  const store = useWorkbenchStore();
  const series = useWorkbench((s) => s.settings.series);
  const [before] = useState(value);
  const unit = fieldUnit(before, kind, system, metricUnit);
  const shown = (v: number | null) => (v === null ? '' : quantityText(showInField(v, kind, system, metricUnit)));
  const [text, setText] = useState(firstText ?? shown(value));
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const gesture = useRef(false);
  const closed = useRef(false);
  const box = useRef<HTMLSpanElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const hintId = useId();
  const messageId = useId();

  useLayoutEffect(() => {
    const anchor = box.current?.parentElement?.getBoundingClientRect();
    if (box.current && anchor) placeInPage(box.current, anchor, 'over');
    input.current?.focus({ preventScroll: true });
    if (firstText === null) input.current?.select();
    closed.current = false;
    return () => {
      // What is still being worked out is no answer any more.
      closed.current = true;
      if (gesture.current) store.getState().endGesture();
    };
  }, [firstText, store]);

  const leave = (how: 'keyboard' | 'elsewhere') => {
    closed.current = true;
    close(how);
  };
  const accept = (result: Result<number>, how: 'keyboard' | 'elsewhere') => {
    if (closed.current) return;
    const found = result.ok ? apply(result.value) : result.problems;
    if (found.length > 0) setProblems(found);
    else leave(how);
  };
  const commit = async (how: 'keyboard' | 'elsewhere') => {
    if (closed.current) return;
    if (text.trim() === shown(value)) return leave(how);
    if (text.trim() === '') {
      if (!clear) return leave(how);
      const found = dispatchHere(store, clear());
      return found.length > 0 ? setProblems(found) : leave(how);
    }
    const now = parseQuantityNow(text, kind, bareUnit(text, kind, unit));
    accept(now === 'needs-expression' ? await parseQuantity(text, kind, unit) : now, how);
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    // The field around it has keys of its own; those of the page, such as saving, stay.
    if (!(event.ctrlKey || event.metaKey)) event.stopPropagation();
    const step = stepKeysOf(event);
    if (event.key === 'Enter') {
      event.preventDefault();
      void commit('keyboard');
    } else if (event.key === 'Escape') {
      event.preventDefault();
      if (gesture.current) store.getState().cancelGesture();
      gesture.current = false;
      leave('keyboard');
    } else if (step) {
      event.preventDefault();
      const now = parseQuantityNow(text, kind, bareUnit(text, kind, unit));
      const from = now !== 'needs-expression' && now.ok ? now.value : value;
      if (from === null) return;
      if (!gesture.current) store.getState().beginGesture();
      gesture.current = true;
      const next = bounded(stepQuantity(from, stepping, step, series, system));
      setProblems(apply(next));
      setText(shown(next));
    }
  };

  return (
    <span ref={box} popover="manual" className="quantity-editor" data-wrong={problems.length > 0 ? '' : undefined}>
      <input
        ref={input}
        value={text}
        aria-label={props.label}
        aria-invalid={problems.length > 0}
        aria-describedby={`${hintId} ${messageId}`}
        autoComplete="off"
        spellCheck={false}
        style={{ width: `${Math.max(8, text.length + 3)}ch` }}
        onChange={(event) => {
          setText(event.target.value);
          setProblems([]);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => void commit('elsewhere')}
      />
      <small id={hintId}>
        {editorHint({ was: before === null ? null : shown(before), stepping, series, system, kind, note: props.note })}
      </small>
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
