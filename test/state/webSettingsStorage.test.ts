import { describe, expect, it } from 'vitest';
import { defaultSettings, readSettings } from '../../src/state/settings.ts';
import { webSettingsStorage } from '../../src/state/webSettingsStorage.ts';

function area() {
  const items = new Map<string, string>();
  return {
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  };
}

describe('stored settings', () => {
  it('come back as they were', () => {
    const storage = webSettingsStorage(area());
    const settings = { ...defaultSettings, theme: 'dark', series: 'E24' } as const;
    storage.save(settings);
    expect(readSettings(storage.load())).toEqual(settings);
  });

  it('fall back one by one, and to the defaults from nothing or nonsense', () => {
    expect(readSettings({ theme: 'dark', series: 'E7', colour: 1 })).toEqual({ ...defaultSettings, theme: 'dark' });
    for (const stored of [null, undefined, 7, 'x', [], webSettingsStorage(area()).load()]) {
      expect(readSettings(stored)).toEqual(defaultSettings);
    }
  });
});
