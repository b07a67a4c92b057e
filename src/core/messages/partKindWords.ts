/** A kind of part as people call it: what the file format calls a jumper is a link. */
export const partKindWords = (kind: unknown): string => (kind === 'jumper' ? 'link' : String(kind));
