import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { ReferenceReply, ReferenceRequest } from './referenceProcess.ts';

/** A process with what the solver is compared with: one request at a time, `close` when done. */
export interface Reference {
  ask(request: ReferenceRequest): Promise<ReferenceReply>;
  close(): void;
}

/** Starts such a process. A request is rejected when the process ends before it has answered. */
export function openReference(): Reference {
  const child = fork(fileURLToPath(new URL('./referenceProcess.ts', import.meta.url)), {
    execArgv: ['--import', 'tsx'],
    serialization: 'advanced',
  });
  let waiting: PromiseWithResolvers | undefined;
  child.on('message', (reply: ReferenceReply) => waiting?.resolve(reply));
  child.on('exit', (code) => waiting?.reject(new Error(`what it is compared with ended with code ${code}`)));
  return {
    ask: (request) =>
      new Promise((resolve, reject) => {
        waiting = { resolve, reject };
        child.send(request);
      }),
    close: () => {
      child.kill();
    },
  };
}

interface PromiseWithResolvers {
  readonly resolve: (reply: ReferenceReply) => void;
  readonly reject: (error: Error) => void;
}
