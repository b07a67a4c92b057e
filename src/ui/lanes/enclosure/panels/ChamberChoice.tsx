import type { Command } from '../../../../core/document/command.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';

/** In which chamber something begins. */
export function ChamberChoice({
  of,
  chamberId,
  command,
}: {
  readonly of: string;
  readonly chamberId: string;
  readonly command: (chamberId: string) => Command;
}) {
  const chambers = useWorkbench((s) => s.project.enclosure.chambers);
  return (
    <ChoiceField
      name="chamber"
      label={`Chamber of ${of}`}
      value={chamberId}
      choices={chambers.map((chamber) => ({ value: chamber.id, words: chamber.name }))}
      command={command}
    />
  );
}
