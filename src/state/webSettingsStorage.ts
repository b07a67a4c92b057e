import type { SettingsStorage } from './settings.ts';

const KEY = 'conewright-settings';

/** Settings as one JSON text in a Web Storage area, such as localStorage. */
export const webSettingsStorage = (area: Pick<Storage, 'getItem' | 'setItem'>): SettingsStorage => ({
  load: () => JSON.parse(area.getItem(KEY) ?? 'null'),
  save: (settings) => area.setItem(KEY, JSON.stringify(settings)),
});
