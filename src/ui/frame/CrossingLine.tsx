import { useWorkbench } from '../useWorkbench.ts';
import './notices.css';

/** Says that undo or redo left the project on the screen for another one, with the way back. */
export function CrossingLine() {
  const crossing = useWorkbench((s) => s.crossing);
  const dismiss = useWorkbench((s) => s.dismissCrossing);
  const undo = useWorkbench((s) => s.undo);
  const redo = useWorkbench((s) => s.redo);
  const wasUndo = crossing?.by === 'undo';
  return (
    <div role="status" className="notice-holder">
      {crossing && (
        <div className="notice notice-crossing" data-testid="crossing">
          <p className="notice-words">
            {wasUndo
              ? `Undo took back the opening of “${crossing.from}”: this is “${crossing.to}” again, as it was before.`
              : `Redo opened “${crossing.to}” again in place of “${crossing.from}”.`}
          </p>
          <button type="button" className="frame-button" onClick={wasUndo ? redo : undo}>
            Return to “{crossing.from}”
          </button>
          <button type="button" className="frame-button" onClick={dismiss}>
            Dismiss
          </button>
        </div>
      )}
    </div>
  );
}
