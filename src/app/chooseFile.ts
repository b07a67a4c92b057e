/** Lets the person choose files and hands on the text of each with its name. Nothing happens when they choose none. */
export function chooseFile(open: (text: string, fileName: string) => void): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  input.addEventListener('change', async () => {
    for (const file of [...(input.files ?? [])]) open(await file.text(), file.name);
  });
  input.click();
}
