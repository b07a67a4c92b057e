import { useState } from 'react';
import type { Part } from '../../../core/circuit/part.ts';
import type { Problem } from '../../../core/messages/problem.ts';
import { FieldMessage } from '../../fields/FieldMessage.tsx';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { NodeChoice } from './NodeChoice.tsx';

/** Moves one end of a part to another node, chosen by name. */
export function EndChoice({ part, end }: { readonly part: Part; readonly end: 0 | 1 }) {
  const store = useWorkbenchStore();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const words = part.kind === 'speaker' || part.kind === 'amplifier' ? ['plus', 'minus'] : ['first', 'other'];
  const messageId = `${part.id}-end-${end}`;
  return (
    <span>
      {words[end]}{' '}
      <NodeChoice
        label={`${part.id}: ${words[end]} end at node`}
        value={part.nodes[end]}
        choose={(to) => setProblems(store.getState().dispatch({ type: 'move-end', partId: part.id, end, to }))}
      />
      <FieldMessage id={messageId} problems={problems} />
    </span>
  );
}
