import { amplifierEnds } from './amplifierEnds.ts';
import { cabinetFit } from './cabinetFit.ts';
import type { Check } from './context.ts';
import { unsuitedBox } from './unsuitedBox.ts';

/** Checks that bring much code with them: the page fetches them when its first picture is there. */
export const laterChecks: readonly Check[] = [amplifierEnds, cabinetFit, unsuitedBox];
