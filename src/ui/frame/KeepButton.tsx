import { useWorkbench } from '../useWorkbench.ts';
import { keptName } from './keptName.ts';

/** Keeps the present state as a ghost in the plots. Two can be kept; a third is refused with a sentence. */
export function KeepButton() {
  const dispatch = useWorkbench((s) => s.dispatch);
  const undoLabel = useWorkbench((s) => s.undoLabel);
  const names = useWorkbench((s) => s.project.snapshots);
  return (
    <button
      type="button"
      className="frame-button frame-button-main"
      title="Keep the present state for comparison (K); Compare keeps it under a name of your own"
      onClick={() =>
        dispatch({
          type: 'keep-state',
          name: keptName(
            undoLabel,
            names.map((state) => state.name),
          ),
        })
      }
    >
      Keep this
    </button>
  );
}
