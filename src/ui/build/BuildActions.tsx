import { useState } from 'react';
import { KeyList } from '../frame/KeyList.tsx';
import { LookButtons } from '../frame/LookButtons.tsx';
import { Popover } from '../frame/Popover.tsx';
import { UndoRedo } from '../frame/UndoRedo.tsx';
import '../frame/frame.css';
import '../frame/Header.css';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { cutListCsv, cutListText } from './read/cutListText.ts';
import { type Build, readBuild } from './read/readBuild.ts';

type Written = { readonly what: string; readonly text: string; readonly copied: boolean } | null;

/** What can be done with the whole sheet: take back, copy its list, print it. */
export function BuildActions({ cabinets }: { readonly cabinets: number }) {
  return (
    <div className="build-actions">
      <UndoRedo />
      <Popover face="Copy the cut list" label="Copy the cut list">
        {() => <CopyList cabinets={cabinets} />}
      </Popover>
      <LookButtons />
      <KeyList />
      <button type="button" className="frame-button frame-button-main" onClick={() => window.print()}>
        Print
      </button>
    </div>
  );
}

/** The list as text or for a spreadsheet. Where the browser does not let a page copy, it stands there to be copied by hand. */
function CopyList({ cabinets }: { readonly cabinets: number }) {
  const store = useWorkbenchStore();
  const [written, setWritten] = useState<Written>(null);
  const copy = async (what: string, write: (build: Build, cabinets: number) => string) => {
    const build = readBuild(store.getState().project);
    if (!build.ok)
      return setWritten({ what: 'Nothing: the cabinet cannot be built as it stands.', text: '', copied: true });
    const text = write(build.value, cabinets);
    try {
      await navigator.clipboard.writeText(text);
      setWritten({ what: `${what} copied.`, text, copied: true });
    } catch {
      setWritten({ what: 'The browser did not allow copying: copy it from here.', text, copied: false });
    }
  };
  return (
    <div className="build-copy">
      <div className="build-buttons">
        <button type="button" className="frame-button frame-button-main" onClick={() => void copy('Text', cutListText)}>
          As text
        </button>
        <button
          type="button"
          className="frame-button frame-button-main"
          onClick={() => void copy('Comma separated list', cutListCsv)}
        >
          For a spreadsheet
        </button>
      </div>
      <p role="status" className="frame-soft">
        {written?.what ?? ''}
      </p>
      {written !== null && !written.copied ? (
        <textarea
          className="build-copy-text"
          aria-label="Cut list"
          readOnly
          rows={8}
          value={written.text}
          onFocus={(event) => event.currentTarget.select()}
        />
      ) : null}
    </div>
  );
}
