import { useContext, useState } from 'react';
import { PageServicesContext, type StartingPoint } from '../PageServices.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { OtherWork } from './OtherWork.tsx';
import { Popover } from './Popover.tsx';

/** Open, save, and begin anew. Whatever is opened can be undone, so nothing asks first. */
export function FileButtons() {
  const { chooseFile, saveFile } = useContext(PageServicesContext);
  return (
    <>
      <button
        type="button"
        className="frame-button"
        onClick={chooseFile}
        title="Open a project, or measured columns of text (Ctrl+O). Dropping a file on the page does the same."
      >
        Open
      </button>
      <button type="button" className="frame-button" onClick={saveFile} title="Save as a file (Ctrl+S)">
        Save
      </button>
      <Popover face="New" label="Begin with">
        {(close) => <StartingPoints close={close} />}
      </Popover>
    </>
  );
}

function StartingPoints({ close }: { close(): void }) {
  const { startingPoints } = useContext(PageServicesContext);
  const open = useWorkbench((s) => s.open);
  const [fault, setFault] = useState<string | null>(null);
  const begin = async (point: StartingPoint): Promise<void> => {
    try {
      open(await point.load());
      close();
    } catch {
      setFault(`“${point.title}” could not be fetched. Check the connection and try again.`);
    }
  };
  return (
    <div className="starts">
      <p className="frame-soft">The present project stays one undo away.</p>
      <ul className="starts-list">
        {startingPoints.map((point) => (
          <li key={point.id}>
            <button type="button" className="frame-button starts-button" onClick={() => void begin(point)}>
              <span className="starts-title">{point.title}</span>
              <span className="frame-soft">{point.about}</span>
            </button>
          </li>
        ))}
      </ul>
      <OtherWork close={close} />
      {fault !== null && <p role="alert">{fault}</p>}
    </div>
  );
}
