import type { Part } from '../../../core/circuit/part.ts';
import type { Problem } from '../../../core/messages/problem.ts';
import { dispatchHere } from '../../fields/dispatchHere.ts';
import { FieldMessage } from '../../fields/FieldMessage.tsx';
import { useWhileOpen } from '../../fields/useWhileOpen.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { NodeChoice } from './NodeChoice.tsx';

/** Moves one end of a part to another node, chosen by name. */
export function EndChoice({ part, end }: { readonly part: Part; readonly end: 0 | 1 }) {
  const store = useWorkbenchStore();
  const [problems, setProblems] = useWhileOpen<readonly Problem[]>([]);
  const words = part.kind === 'speaker' || part.kind === 'amplifier' ? ['plus', 'minus'] : ['first', 'other'];
  const messageId = `${part.id}-end-${end}`;
  return (
    <span>
      {words[end]}{' '}
      <NodeChoice
        label={`${part.id}: ${words[end]} end at node`}
        value={part.nodes[end]}
        choose={(to) => setProblems(dispatchHere(store, { type: 'move-end', partId: part.id, end, to }))}
      />
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
