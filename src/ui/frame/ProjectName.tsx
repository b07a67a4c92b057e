import { useEffect, useState } from 'react';
import { useWorkbench } from '../useWorkbench.ts';

/** The project's name, edited where it stands: Enter or leaving takes it, Escape puts it back. */
export function ProjectName() {
  const name = useWorkbench((s) => s.project.name);
  const dispatch = useWorkbench((s) => s.dispatch);
  const [draft, setDraft] = useState(name);
  useEffect(() => setDraft(name), [name]);
  const take = (): void => {
    const trimmed = draft.trim();
    if (trimmed === '' || trimmed === name) setDraft(name);
    else if (dispatch({ type: 'set-name', name: trimmed }).length > 0) setDraft(name);
  };
  return (
    <h1 className="header-name">
      <input
        aria-label="Name of the project"
        value={draft}
        maxLength={160}
        size={Math.max(8, Math.min(draft.length + 1, 28))}
        spellCheck={false}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
          if (event.key === 'Escape') setDraft(name);
        }}
      />
    </h1>
  );
}
