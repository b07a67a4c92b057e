/**
 * The line, counted from 1, at which a JSON text stopped making sense, as far as the engine's message says: by line or by
 * position. null where it says neither.
 */
export function jsonErrorLine(text: string, error: unknown): number | null {
  const message = error instanceof Error ? error.message : '';
  const line = /line (\d+)/i.exec(message)?.[1];
  if (line !== undefined) return Number(line);
  const position = /position (\d+)/i.exec(message)?.[1];
  if (position !== undefined) return text.slice(0, Number(position)).split('\n').length;
  return /end of (JSON input|data)|EOF/i.test(message) ? text.split('\n').length : null;
}
