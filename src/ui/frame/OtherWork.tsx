import { useContext } from 'react';
import type { KeptAside } from '../../state/workbench.ts';
import { PageServicesContext } from '../PageServices.ts';
import { useWorkbench } from '../useWorkbench.ts';

const KIND: Readonly<Record<KeptAside['kind'], string>> = {
  copy: 'from another window or day',
  damaged: 'could not be read; kept as it was found',
  newer: 'made by a newer version; kept as it was found',
};

/** Other work that this browser keeps. Opening it can be undone; nothing here is ever deleted. */
export function OtherWork({ close }: { close(): void }) {
  const others = useWorkbench((s) => s.keptAside);
  const openKeptAside = useWorkbench((s) => s.openKeptAside);
  const keptAsideText = useWorkbench((s) => s.keptAsideText);
  const { saveText } = useContext(PageServicesContext);
  if (others.length === 0) return null;
  return (
    <section aria-label="Other work in this browser">
      <h2 className="starts-title">Other work in this browser</h2>
      <ul className="starts-list">
        {others.map(({ key, name, kind }) => (
          <li key={key} className="starts-other">
            <span>
              {name} <span className="frame-soft">{KIND[kind]}</span>
            </span>
            {kind === 'copy' && (
              <button type="button" className="frame-button" onClick={() => void openKeptAside(key).then(close)}>
                Open
              </button>
            )}
            <button
              type="button"
              className="frame-button"
              onClick={async () => {
                const text = await keptAsideText(key);
                if (text !== null) saveText(text, name);
              }}
            >
              Save as a file
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
