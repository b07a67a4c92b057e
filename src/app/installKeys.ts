import type { StoreApi } from 'zustand';
import type { Workbench } from '../state/workbench.ts';
import type { PageServices } from '../ui/index.ts';

/** Whether what is typed belongs to a field, so that letters and undo are its own. */
function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement)
    return true;
  return target instanceof HTMLInputElement && !['range', 'radio', 'checkbox', 'button'].includes(target.type);
}

/**
 * The keys that work anywhere on the page (the list that “?” opens says them all). Letters without Ctrl count only while
 * no field is being typed in. Returns what takes the keys away again.
 */
export function installKeys(
  store: StoreApi<Workbench>,
  services: Pick<PageServices, 'saveFile' | 'chooseFile'>,
  showKeys: () => void,
  keep: () => void,
): () => void {
  const withControl: Readonly<Record<string, (event: KeyboardEvent) => void>> = {
    z: (event) => (event.shiftKey ? store.getState().redo() : store.getState().undo()),
    y: () => store.getState().redo(),
    s: () => services.saveFile(),
    o: () => services.chooseFile(),
  };
  const alone: Readonly<Record<string, () => void>> = {
    l: () => store.getState().setSettings({ largeType: !store.getState().settings.largeType }),
    k: keep,
    '?': showKeys,
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.altKey || event.isComposing) return;
    const key = event.key.toLowerCase();
    const typing = isTyping(event.target);
    if (event.ctrlKey || event.metaKey) {
      const act = Object.hasOwn(withControl, key) ? withControl[key] : undefined;
      if (!act || (typing && (key === 'z' || key === 'y'))) return;
      event.preventDefault();
      act(event);
      return;
    }
    const act = Object.hasOwn(alone, key) ? alone[key] : undefined;
    if (!act || typing) return;
    event.preventDefault();
    act();
  };
  window.addEventListener('keydown', onKeyDown);
  return () => window.removeEventListener('keydown', onKeyDown);
}
