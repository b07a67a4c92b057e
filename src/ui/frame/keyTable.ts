/** Keys that work anywhere on the page. Letters count only while no field is being typed in. */
export const KEY_TABLE: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Ctrl+Z', does: 'undo' },
  { keys: 'Ctrl+Shift+Z or Ctrl+Y', does: 'redo' },
  { keys: 'Ctrl+S', does: 'save as a file' },
  { keys: 'Ctrl+O', does: 'open a file' },
  { keys: 'L', does: 'large type on or off' },
  { keys: 'K', does: 'keep the present state' },
  { keys: '?', does: 'show this list' },
  { keys: 'Tab, Shift+Tab', does: 'go from one value, part or button to the next' },
  { keys: '↑ ↓ on a value', does: 'step it; with Shift in larger steps' },
  { keys: 'Enter on a value', does: 'type it: numbers, units and arithmetic' },
  { keys: '← → on a plot', does: 'move the cursor by a twelfth of an octave; Page keys by an octave' },
  { keys: 'Esc', does: 'leave a field or a drag as it was; close a panel; take the cursor away' },
];
