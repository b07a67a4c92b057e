import { type ReactNode, useId } from 'react';
import type { Command } from '../../../core/document/command.ts';
import type { Problem } from '../../../core/messages/problem.ts';
import { dispatchHere } from '../../fields/dispatchHere.ts';
import { FieldMessage } from '../../fields/FieldMessage.tsx';
import { useWhileOpen } from '../../fields/useWhileOpen.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';

/** A button of the build sheet that carries out a command; when that is refused the sentence stands below it. */
export function SayingButton({
  command,
  label,
  children,
}: {
  readonly command: () => Command;
  readonly label?: string;
  readonly children: ReactNode;
}) {
  const store = useWorkbenchStore();
  const [problems, setProblems] = useWhileOpen<readonly Problem[]>([]);
  const messageId = useId();
  return (
    <span className="build-saying">
      <button
        type="button"
        className="frame-button frame-button-main"
        aria-label={label}
        aria-describedby={problems.length > 0 ? messageId : undefined}
        onBlur={() => setProblems([])}
        onClick={() => setProblems(dispatchHere(store, command()))}
      >
        {children}
      </button>
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
