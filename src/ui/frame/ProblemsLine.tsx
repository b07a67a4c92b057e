import { word } from '../../core/messages/word.ts';
import { useWorkbench } from '../useWorkbench.ts';
import './notices.css';
import { selectionOf } from './selectionOf.ts';
import { selectionWords } from './selectionWords.ts';

/** Why the present design cannot be computed. The plots keep the last good picture meanwhile, and this line says so. */
export function ProblemsLine() {
  const problems = useWorkbench((s) => s.problems);
  const project = useWorkbench((s) => (s.problems.length > 0 ? s.project : null));
  const select = useWorkbench((s) => s.select);
  const hasPicture = useWorkbench((s) => s.evaluation !== null);
  return (
    <div role="alert" className="notice-holder">
      {problems.length > 0 && (
        <div className="notice notice-problem" data-testid="problems">
          <p className="notice-lead">This cannot be computed{hasPicture ? '; the last good picture stays' : ''}:</p>
          <ul>
            {problems.map((problem) => {
              const { sentence, remedy } = word(problem);
              const selection = project && selectionOf(problem.place, project);
              return (
                <li key={`${sentence}${remedy}`}>
                  {sentence} <span className="frame-soft">{remedy}</span>
                  {selection && (
                    <button type="button" className="frame-link" onClick={() => select(selection)}>
                      show {selectionWords(selection, project)}
                    </button>
                  )}
                </li>
              );
            })}
          </ul>
        </div>
      )}
    </div>
  );
}
