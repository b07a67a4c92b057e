import { useContext, useSyncExternalStore } from 'react';
import { PageServicesContext } from '../PageServices.ts';

/** A newer version waits: reloading is left to the person, who may be in the middle of something. */
export function UpdateButton() {
  const { update } = useContext(PageServicesContext);
  const ready = useSyncExternalStore(update.subscribe, update.ready);
  if (!ready) return null;
  return (
    <button type="button" className="frame-button frame-button-main" onClick={update.take}>
      Newer version: reload
    </button>
  );
}
