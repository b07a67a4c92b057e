/**
 * File name of a project: its name in small letters and hyphens, then the project's own ending.
 * Example: `projectFileName('Reading room three-way')` is `reading-room-three-way.conewright.json`.
 */
export function projectFileName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'project' : plain}.conewright.json`;
}
