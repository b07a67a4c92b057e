import type { Evaluation } from '../core/design/evaluation.ts';
import { projectOfState } from '../core/document/design.ts';
import type { Project, Snapshot } from '../core/document/schema.ts';
import type { Result } from '../core/messages/problem.ts';
import type { MaybeLater } from './answered.ts';
import type { Ghost } from './workbench.ts';

/** Curves as they were when a kept state was evaluated; a state without measured drivers does not depend on them. */
interface Kept {
  readonly state: Snapshot;
  readonly curves: Project['curves'] | null;
  ghost: Ghost;
}

/**
 * Evaluates each kept state once, and again only when it changes or the curves that its drivers use may have.
 * The list and its entries stay identical until then. `onLate` tells that a later answer has come in.
 */
export function ghostKeeper(evaluate: (project: Project) => MaybeLater<Result<Evaluation>>, onLate: () => void) {
  let kept: readonly Kept[] = [];
  let list: readonly Ghost[] = [];

  function keep(state: Snapshot, project: Project): Kept {
    const curves = state.drivers.some((driver) => driver.measured !== null) ? project.curves : null;
    const known = kept.find((entry) => entry.state === state && entry.curves === curves);
    if (known) return known;
    const { id, name } = state;
    const answer = evaluate(projectOfState(project, state));
    const entry: Kept = { state, curves, ghost: { id, name, evaluation: null } };
    if (answer instanceof Promise) {
      void answer.then((result) => {
        if (result.ok) entry.ghost = { id, name, evaluation: result.value };
        onLate();
      });
    } else if (answer.ok) entry.ghost = { id, name, evaluation: answer.value };
    return entry;
  }

  return (project: Project): readonly Ghost[] => {
    kept = project.snapshots.map((state) => keep(state, project));
    const ghosts = kept.map((entry) => entry.ghost);
    if (ghosts.length !== list.length || ghosts.some((ghost, k) => ghost !== list[k])) list = ghosts;
    return list;
  };
}
