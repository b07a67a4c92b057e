import { useState } from 'react';
import type { Part } from '../../../core/circuit/part.ts';
import type { Project } from '../../../core/document/schema.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { KindIcon } from './KindIcon.tsx';
import { NodeChoice } from './NodeChoice.tsx';
import { newPart, PASSIVE_KINDS } from './newParts.ts';
import { nodesInOrder } from './nodesInOrder.ts';
import { KIND_WORDS } from './partNames.ts';

/** Adds a part across two nodes, at first those of the picked part. */
export function AcrossForm({
  part,
  added,
}: {
  readonly part: Part;
  readonly added: (before: Project, now: Project) => void;
}) {
  const parts = useWorkbench((s) => s.project.network.parts);
  const [chosen, setChosen] = useState(part.nodes);
  const names = nodesInOrder(parts);
  // A node that is gone falls back to the part's own.
  const nodes: readonly [string, string] = [
    names.includes(chosen[0]) ? chosen[0] : part.nodes[0],
    names.includes(chosen[1]) ? chosen[1] : part.nodes[1],
  ];
  return (
    <>
      <span className="lane-soft">across</span>
      <span className="part-sheet-kinds">
        <NodeChoice label="Across: first node" value={nodes[0]} choose={(node) => setChosen([node, nodes[1]])} />
        <NodeChoice label="Across: second node" value={nodes[1]} choose={(node) => setChosen([nodes[0], node])} />
        {PASSIVE_KINDS.map((kind) => (
          <RefusingButton
            key={kind}
            className="lane-button part-sheet-kind"
            label={`Add across: ${KIND_WORDS[kind]}`}
            command={() => ({ type: 'add-across', nodes, part: newPart(kind, 'across') })}
            after={added}
          >
            <KindIcon kind={kind} />
          </RefusingButton>
        ))}
      </span>
    </>
  );
}
