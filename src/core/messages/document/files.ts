import { formatFigure } from '../formatFigure.ts';
import type { WordingByCode } from '../problem.ts';

const megabytes = (characters: unknown) => formatFigure(Number(characters) / 1e6, 3);

/** Sentences about project files, storage and the evaluation of a document. */
export const fileWording: WordingByCode = {
  'document.empty-file': () => ({
    sentence: 'The file is empty.',
    remedy: 'Choose a project file (NAME.conewright.json) or a text file with measured columns.',
  }),
  'document.too-large-file': (values) => ({
    sentence: `The file has ${megabytes(values.characters)} million characters; up to ${megabytes(values.most)} million are read.`,
    remedy: 'Thin out its measured curves, or leave some out.',
  }),
  'document.not-json': (_, place) => ({
    sentence: `The file is no well-formed project${place.line ? `: line ${place.line} cannot be read` : ''}.`,
    remedy: 'It may have been cut off while it was copied: copy it again, or open an earlier one.',
  }),
  'document.not-a-project': (values) => ({
    sentence: `The file is not a Conewright project${values.found ? `: it says “${values.found}”` : ''}.`,
    remedy: 'Choose a file that was saved here (NAME.conewright.json).',
  }),
  'document.bad-version': (values) => ({
    sentence: `The project says version “${values.found}”, which is no version number.`,
    remedy: `Versions are whole numbers from 1 to ${values.known}.`,
  }),
  'document.newer-version': (values) => ({
    sentence: `The project was saved by a newer version (format ${values.found}; this one reads up to ${values.known}). It was left untouched.`,
    remedy: 'Reload the page to get the newest version, then open it again.',
  }),
  'document.migration-failed': (values) => ({
    sentence: `The project of format ${values.from} could not be carried over to format ${Number(values.from) + 1}: ${values.detail}.`,
    remedy: 'The file was left untouched. Open it with the version that saved it.',
  }),
  'document.more-problems': (values) => ({
    sentence: `${values.count} more places in the file cannot be read.`,
    remedy: 'Correct the ones above first.',
  }),
  'document.stored-damaged': (values) => ({
    sentence: `The stored work cannot be read; it is kept aside as “${values.copy}”, and the demonstration project is shown.`,
    remedy: 'Nothing was deleted: save the copy as a file to look into it.',
  }),
  'document.stored-newer': (values) => ({
    sentence: `The stored work was saved by a newer version; it is kept aside as “${values.copy}”, and the demonstration project is shown.`,
    remedy: 'Reload the page to get the newest version, then open the copy.',
  }),
  'document.storage-unreadable': (values) => ({
    sentence: `The browser's storage cannot be used (${values.detail}).`,
    remedy: 'Save your work as a file; a private window or a full disk can be the cause.',
  }),
  'document.save-failed': (values) => ({
    sentence: `The last change could not be stored (${values.detail}).`,
    remedy: 'Save your work as a file; the next change tries again.',
  }),
  'document.other-window': (values) => ({
    sentence: `Another window has stored other work since; nothing was overwritten: this window's work is now kept separately as “${values.copy}”.`,
    remedy: 'Go on in one window, and open the other work from the kept copies.',
  }),
  'document.not-evaluated': (values) => ({
    sentence: `The prediction failed unexpectedly (${values.detail}). The last good picture stays.`,
    remedy: 'Undo the last change; this is a fault of the program.',
  }),
  'document.not-read': (values) => ({
    sentence: `The file could not be read: ${values.detail}.`,
    remedy: 'Load the page again, with the network on for once, and drop the file again.',
  }),
  'document.not-drawn': (values) => ({
    sentence: `The circuit could not be drawn (${values.detail}). The last good drawing stays.`,
    remedy: 'Undo the last change; this is a fault of the program.',
  }),
  'document.no-curve-waiting': () => ({
    sentence: 'There is no measured curve waiting to be taken over.',
    remedy: 'Open a text file with measured columns first.',
  }),
};
