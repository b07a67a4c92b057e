import { useId, useState } from 'react';
import type { Problem } from '../../core/messages/problem.ts';
import { dispatchHere } from '../fields/dispatchHere.ts';
import { FieldMessage } from '../fields/index.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import './KeepForm.css';
import { keptName } from './keptName.ts';

/** Keeps the present state under a name of the person's own; left empty, it is called after the last edit. */
export function KeepForm() {
  const store = useWorkbenchStore();
  const undoLabel = useWorkbench((s) => s.undoLabel);
  const taken = useWorkbench((s) => s.project.snapshots).map((state) => state.name);
  const [name, setName] = useState('');
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const messageId = useId();
  const keep = (): void => {
    const wanted = name.trim();
    const found = dispatchHere(store, {
      type: 'keep-state',
      name: keptName(wanted === '' ? undoLabel : wanted, taken),
    });
    setProblems(found);
    if (found.length === 0) setName('');
  };
  return (
    <form
      className="keep-form"
      aria-label="Keep under a name"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <label className="keep-form-name">
        <span className="frame-soft">Keep the present state as</span>
        <input
          value={name}
          maxLength={100}
          autoComplete="off"
          placeholder={keptName(undoLabel, taken)}
          aria-describedby={problems.length > 0 ? messageId : undefined}
          onChange={(event) => {
            setName(event.target.value);
            setProblems([]);
          }}
        />
      </label>
      <button type="submit" className="frame-button frame-button-main">
        Keep it
      </button>
      <FieldMessage id={messageId} problems={problems} />
    </form>
  );
}
