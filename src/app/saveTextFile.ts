/** Hands a text to the browser as a file to download. */
export function saveTextFile(text: string, fileName: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The download has taken hold of the address by the next task; a minute leaves room for a slow disk.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
