import type { WindowMemory } from './projectStorage.ts';

const KEY = 'conewright-slot';

/** A window's own slot in a Web Storage area that lasts as long as the window and no longer: sessionStorage. */
export const webWindowMemory = (area: Pick<Storage, 'getItem' | 'setItem'>): WindowMemory => ({
  load: () => area.getItem(KEY),
  save: (slotKey) => area.setItem(KEY, slotKey),
});
