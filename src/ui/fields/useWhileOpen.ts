import { useCallback, useState } from 'react';
import { useWorkbench } from '../useWorkbench.ts';

/**
 * State of a control about the document on the screen: back to `empty` as soon as another document takes its place, so
 * that a text half typed, or a refusal, never stands over a document that it was not meant for.
 */
export function useWhileOpen<T>(empty: T): [T, (value: T) => void] {
  const opening = useWorkbench((s) => s.opening);
  const [held, setHeld] = useState({ value: empty, opening });
  const hold = useCallback((value: T) => setHeld({ value, opening }), [opening]);
  return [held.opening === opening ? held.value : empty, hold];
}
