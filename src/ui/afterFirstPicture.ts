import { type ComponentType, lazy } from 'react';
import { firstPicture } from './plots/markFirstPicture.ts';

/** What is not the answer itself is fetched when the answer is on the screen, or when none seems to come. */
const PATIENCE_MS = 600;

/** Settles when the first curve has been painted, or after a short while without one. */
export const answerShown: Promise<unknown> = Promise.race([
  firstPicture,
  new Promise((resolve) => setTimeout(resolve, PATIENCE_MS)),
]);

/** A component whose code is fetched after the first picture. Render it inside a Suspense. */
export function afterFirstPicture<Props extends object>(load: () => Promise<ComponentType<Props>>) {
  return lazy(async () => {
    await answerShown;
    return { default: await load() };
  });
}
