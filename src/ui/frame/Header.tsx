import { CompareButton } from './CompareButton.tsx';
import { DriveField } from './DriveField.tsx';
import { FileButtons } from './FileButtons.tsx';
import './frame.css';
import './Header.css';
import { useMedia } from '../useMedia.ts';
import { KeepButton } from './KeepButton.tsx';
import { KeyList } from './KeyList.tsx';
import { LookButtons } from './LookButtons.tsx';
import { Popover } from './Popover.tsx';
import { ProjectName } from './ProjectName.tsx';
import { StorageState } from './StorageState.tsx';
import { UndoRedo } from './UndoRedo.tsx';
import { UpdateButton } from './UpdateButton.tsx';

/** Here what is used seldom goes under one button, so that the line stays one line. */
const SHORT_OF_ROOM = '(max-width: 70rem)';

/** The top line: what this is, what was done last, at which drive, and what can be done with the whole. */
export function Header({ onBuild }: { readonly onBuild?: () => void }) {
  const narrow = useMedia(SHORT_OF_ROOM);
  const actions = (
    <>
      <FileButtons />
      <LookButtons />
      <KeyList />
    </>
  );
  return (
    <header className="header">
      <ProjectName />
      <StorageState />
      <UndoRedo />
      <DriveField />
      <div className="header-actions">
        <UpdateButton />
        <KeepButton />
        <CompareButton />
        {onBuild ? (
          <button
            type="button"
            className="frame-button"
            title="Cut list, holes and boards of the cabinet"
            onClick={onBuild}
          >
            Build sheet
          </button>
        ) : null}
        {narrow ? (
          <Popover face="More" label="Files, looks and keys">
            {() => <div className="header-more">{actions}</div>}
          </Popover>
        ) : (
          actions
        )}
      </div>
    </header>
  );
}
