import { answerShown, type PageServices } from '../ui/index.ts';

/**
 * Registers the service worker that makes the page work offline. A newer version is only announced: taking it reloads the
 * page, which is left to the person. Begins after the first picture.
 */
export function watchForUpdates(): PageServices['update'] {
  const listeners = new Set<() => void>();
  let isReady = false;
  let reload: ((reloadPage?: boolean) => Promise<void>) | null = null;
  void answerShown.then(async () => {
    const { registerSW } = await import('virtual:pwa-register');
    reload = registerSW({
      onNeedRefresh() {
        isReady = true;
        for (const listener of listeners) listener();
      },
    });
  });
  return {
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    ready: () => isReady,
    take: () => void reload?.(true),
  };
}
