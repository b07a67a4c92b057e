import type { Command } from '../../../core/document/command.ts';
import type { Wood } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { LengthField } from './LengthField.tsx';
import { SayingButton } from './SayingButton.tsx';

type Board = NonNullable<Wood['board']>;

/** A board with some coils and capacitors, to begin with. Common practice, no source. */
const USUAL_BOARD = { widthM: 0.15, heightM: 0.2, depthM: 0.05 } as const;
const SIZES = [
  ['widthM', 'width'],
  ['heightM', 'height'],
  ['depthM', 'depth with its parts'],
] as const;

/** The crossover board as the box that it takes from a chamber's air. */
export function BoardFields() {
  const { chambers, wood } = useWorkbench((s) => s.project.enclosure);
  const { board } = wood;
  const set = (next: Board | null): Command => ({ type: 'set-wood', changes: { board: next } });
  if (board === null) {
    const [first] = chambers;
    if (first === undefined) return <p className="build-soft">A board needs a chamber first.</p>;
    return (
      <SayingButton command={() => set({ chamberId: first.id, ...USUAL_BOARD })}>
        Allow for a crossover board
      </SayingButton>
    );
  }
  return (
    <>
      <ChoiceField
        name="in"
        label="Chamber of the crossover board"
        value={board.chamberId}
        choices={chambers.map((chamber) => ({ value: chamber.id, words: chamber.name }))}
        command={(chamberId) => set({ ...board, chamberId })}
      />
      {SIZES.map(([field, name]) => (
        <LengthField
          key={field}
          name={name}
          label={`Crossover board, ${name}`}
          value={board[field]}
          least={0.001}
          command={(next) => set({ ...board, [field]: next })}
        />
      ))}
      <SayingButton command={() => set(null)}>Leave it out</SayingButton>
    </>
  );
}
