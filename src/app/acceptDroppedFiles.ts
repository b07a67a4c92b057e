/**
 * Files dropped anywhere on the page are read as text and handed on, one after another. While a file hovers, the page says
 * so through `data-dropping` on the document. Returns what stops it.
 */
export function acceptDroppedFiles(open: (text: string, fileName: string) => void): () => void {
  const root = document.documentElement;
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
  const onOver = (event: DragEvent): void => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    root.dataset.dropping = '';
  };
  const onLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) delete root.dataset.dropping;
  };
  const onDrop = async (event: DragEvent): Promise<void> => {
    delete root.dataset.dropping;
    if (!hasFiles(event)) return;
    event.preventDefault();
    for (const file of [...(event.dataTransfer?.files ?? [])]) open(await file.text(), file.name);
  };
  const dropped = (event: DragEvent): void => void onDrop(event);
  window.addEventListener('dragover', onOver);
  window.addEventListener('dragleave', onLeave);
  window.addEventListener('drop', dropped);
  return () => {
    window.removeEventListener('dragover', onOver);
    window.removeEventListener('dragleave', onLeave);
    window.removeEventListener('drop', dropped);
  };
}
