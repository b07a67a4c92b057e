import type { CutSheets } from '../state/index.ts';

/** Lays sheets out in a worker of their own, which is ended with its job: a search under way hears nothing. */
export const cutSheetsInWorker: CutSheets = (job, hear) => {
  const worker = new Worker(new URL('../worker/cutting.ts', import.meta.url), { type: 'module' });
  const end = (): void => {
    worker.onmessage = null;
    worker.onerror = null;
    worker.terminate();
  };
  worker.onmessage = ({ data }) => {
    hear(data);
    if (data.kind === 'done') end();
  };
  worker.onerror = (event) => {
    console.error(event.message);
    hear({ kind: 'failed' });
    end();
  };
  worker.postMessage(job);
  return end;
};
