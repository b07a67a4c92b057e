import type { WorkbenchState } from '../../state/workbench.ts';
import { useWorkbench } from '../useWorkbench.ts';

const WORDS: Readonly<Record<WorkbenchState['storage'], string>> = {
  loading: 'opening…',
  saving: 'saving…',
  saved: 'saved in this browser',
  failed: 'not saved: use Save',
};

/** Whether the last edit is safe: it says saved only when the browser's storage has confirmed it. */
export function StorageState() {
  const storage = useWorkbench((s) => s.storage);
  return (
    <span role="status" className={`header-storage header-storage-${storage}`} data-testid="storage">
      {WORDS[storage]}
    </span>
  );
}
