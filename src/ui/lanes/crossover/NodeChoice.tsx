import { useWorkbench } from '../../useWorkbench.ts';
import { nodesInOrder } from './nodesInOrder.ts';
import { nodeWords } from './partNames.ts';

/** One of the circuit's nodes, by name. */
export function NodeChoice({
  label,
  value,
  choose,
}: {
  readonly label: string;
  readonly value: string;
  readonly choose: (node: string) => void;
}) {
  const parts = useWorkbench((s) => s.project.network.parts);
  return (
    <select
      className="field-row-choice"
      aria-label={label}
      value={value}
      onChange={(event) => choose(event.target.value)}
    >
      {nodesInOrder(parts).map((node) => (
        <option key={node} value={node}>
          {nodeWords(node)}
        </option>
      ))}
    </select>
  );
}
