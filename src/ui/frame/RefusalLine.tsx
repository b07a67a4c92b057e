import { word } from '../../core/messages/word.ts';
import { useWorkbench } from '../useWorkbench.ts';
import './notices.css';

/** Why the last edit or file was refused, and what to do. Goes with the next success, or when dismissed. */
export function RefusalLine() {
  const refusal = useWorkbench((s) => s.refusal);
  const dismiss = useWorkbench((s) => s.dismissRefusal);
  return (
    <div role="alert" className="notice-holder">
      {refusal.length > 0 && (
        <div className="notice notice-refusal" data-testid="refusal">
          <ul>
            {refusal.map((problem) => {
              const { sentence, remedy } = word(problem);
              return (
                <li key={`${sentence}${remedy}`}>
                  {sentence} <span className="frame-soft">{remedy}</span>
                </li>
              );
            })}
          </ul>
          <button type="button" className="frame-button" onClick={dismiss}>
            Dismiss
          </button>
        </div>
      )}
    </div>
  );
}
