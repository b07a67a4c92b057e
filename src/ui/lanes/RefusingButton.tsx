import { type ReactNode, useId } from 'react';
import type { Command } from '../../core/document/command.ts';
import type { Project } from '../../core/document/schema.ts';
import type { Problem } from '../../core/messages/problem.ts';
import { dispatchHere } from '../fields/dispatchHere.ts';
import { FieldMessage } from '../fields/FieldMessage.tsx';
import { useWhileOpen } from '../fields/useWhileOpen.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';

/** A button that carries out a command; when that is refused the sentence stands beside it. */
export function RefusingButton({
  command,
  after,
  label,
  className = 'lane-button',
  children,
}: {
  readonly command: () => Command | null;
  /** What follows when it was carried out, with the document before and after. */
  readonly after?: (before: Project, now: Project) => void;
  readonly label?: string;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const store = useWorkbenchStore();
  const [problems, setProblems] = useWhileOpen<readonly Problem[]>([]);
  const messageId = useId();
  return (
    <span className="refusing-button">
      <button
        type="button"
        className={className}
        aria-label={label}
        aria-describedby={problems.length > 0 ? messageId : undefined}
        onBlur={() => setProblems([])}
        onClick={() => {
          const wanted = command();
          if (wanted === null) return;
          const before = store.getState().project;
          const found = dispatchHere(store, wanted);
          setProblems(found);
          if (found.length === 0) after?.(before, store.getState().project);
        }}
      >
        {children}
      </button>
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
