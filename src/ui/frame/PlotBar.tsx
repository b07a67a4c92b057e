import type { CursorPin } from '../plots/index.ts';
import { ListeningControl } from './ListeningControl.tsx';
import { ReadAtField } from './ReadAtField.tsx';

/** What stands over the plots at the left: where one listens, and the frequency to read. */
export function PlotBar({ pin }: { pin: CursorPin }) {
  return (
    <>
      <ListeningControl />
      <ReadAtField pin={pin} />
    </>
  );
}
