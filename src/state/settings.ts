import * as z from 'zod/mini';
import type { Settings } from './workbench.ts';

/** Where settings survive the page, apart from the document. */
export interface SettingsStorage {
  load(): unknown;
  save(settings: Settings): void;
}

export const defaultSettings: Settings = {
  theme: 'auto',
  largeType: false,
  units: 'metric',
  series: 'E12',
};

/** Each setting falls back by itself, so that one from another version costs none of the others. */
const settingsSchema = z.object({
  theme: z.catch(z.enum(['auto', 'light', 'dark']), defaultSettings.theme),
  largeType: z.catch(z.boolean(), defaultSettings.largeType),
  units: z.catch(z.enum(['metric', 'imperial']), defaultSettings.units),
  series: z.catch(z.enum(['E6', 'E12', 'E24', 'E48', 'E96']), defaultSettings.series),
});

/** Settings from whatever was stored: what is missing or not understood takes its default. */
export const readSettings = (stored: unknown): Settings => z.catch(settingsSchema, defaultSettings).parse(stored);
