import { useWorkbench } from '../useWorkbench.ts';

/** Undo and redo, each with what it would take back or bring again. */
export function UndoRedo() {
  const undoLabel = useWorkbench((s) => s.undoLabel);
  const redoLabel = useWorkbench((s) => s.redoLabel);
  const undo = useWorkbench((s) => s.undo);
  const redo = useWorkbench((s) => s.redo);
  return (
    <div className="header-undo">
      <button
        type="button"
        className="frame-button header-undo-button"
        disabled={undoLabel === null}
        onClick={undo}
        title={undoLabel === null ? 'Nothing to undo' : `Undo: ${undoLabel} (Ctrl+Z)`}
      >
        Undo
        {undoLabel !== null && <span className="header-undo-what frame-soft">{undoLabel}</span>}
      </button>
      <button
        type="button"
        className="frame-button"
        disabled={redoLabel === null}
        onClick={redo}
        title={redoLabel === null ? 'Nothing to redo' : `Redo: ${redoLabel} (Ctrl+Shift+Z)`}
      >
        Redo
      </button>
    </div>
  );
}
