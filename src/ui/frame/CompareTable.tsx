import { compareProjects, type Difference } from '../../core/document/compareProjects.ts';
import { formatField } from '../../core/document/describe/formatField.ts';
import { thingName } from '../../core/document/describe/thingName.ts';
import type { Project, Snapshot } from '../../core/document/schema.ts';
import { fieldWords, lastField } from '../../core/messages/documentFields.ts';
import { useWorkbench } from '../useWorkbench.ts';
import './CompareTable.css';
import { CompareResults } from './CompareResults.tsx';

/** What differs between each kept state and the present one, with the way back to it. */
export default function CompareTable({ close }: { close(): void }) {
  const project = useWorkbench((s) => s.project);
  const ghosts = useWorkbench((s) => s.ghosts);
  // What cannot be solved has no results of its own: the last good ones would pass for them.
  const now = useWorkbench((s) => (s.problems.length === 0 ? s.evaluation?.keyFigures : undefined));
  if (project.snapshots.length === 0) {
    return (
      <p className="compare-empty">
        Nothing is kept yet. “Keep this” pins the present state: its curves stay in the plots as faint dots, and this
        list says what you have changed since.
      </p>
    );
  }
  return (
    <div className="compare">
      {project.snapshots.map((kept) => {
        const before = ghosts.find(({ id }) => id === kept.id)?.evaluation?.keyFigures;
        return (
          <div key={kept.id} className="compare-one">
            <KeptState kept={kept} project={project} close={close} />
            {before && now ? <CompareResults name={kept.name} before={before} now={now} /> : null}
          </div>
        );
      })}
    </div>
  );
}

function KeptState({ kept, project, close }: { kept: Snapshot; project: Project; close(): void }) {
  const dispatch = useWorkbench((s) => s.dispatch);
  const differences = compareProjects(kept, project);
  return (
    <section aria-label={`Kept: ${kept.name}`}>
      <div className="compare-head">
        <h2 className="compare-name">kept: {kept.name}</h2>
        <button
          type="button"
          className="frame-button"
          onClick={() => {
            dispatch({ type: 'return-to-state', id: kept.id });
            close();
          }}
        >
          Go back to it
        </button>
        <button type="button" className="frame-button" onClick={() => dispatch({ type: 'drop-state', id: kept.id })}>
          Drop
        </button>
      </div>
      {differences.length === 0 ? (
        <p className="frame-soft">Nothing differs: this is the present state.</p>
      ) : (
        <table className="compare-table">
          <thead>
            <tr>
              <th scope="col">what</th>
              <th scope="col">kept</th>
              <th scope="col">now</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((difference) => (
              <tr key={`${difference.place.kind} ${difference.place.id} ${difference.field}`}>
                <th scope="row">{nameOf(difference, project, kept)}</th>
                <td>{shown(difference, difference.before)}</td>
                <td>{shown(difference, difference.after)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

const shown = ({ field }: Difference, value: Difference['before']): string =>
  field === '' ? (value === null ? 'not there' : 'there') : formatField(field, value);

function nameOf({ place, field }: Difference, now: Project, kept: Snapshot): string {
  const id = place.id ?? place.field ?? '';
  const thing = thingName(place.kind, id, now) ?? thingName(place.kind, id, kept);
  const words = field === '' ? '' : fieldWords(lastField(field)).words;
  return [thing ?? id, words].filter((text) => text !== '').join(', ');
}
