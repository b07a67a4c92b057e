export { type Choice, ChoiceField } from './ChoiceField.tsx';
export { FieldMessage } from './FieldMessage.tsx';
export { FieldRow } from './FieldRow.tsx';
export { QuantityField, type QuantityFieldProps } from './QuantityField.tsx';
export { type Stepping, steppingOf } from './stepping.ts';
export { TextField } from './TextField.tsx';
export { type DragState, useDragGesture } from './useDragGesture.ts';
export { useHeldKeys } from './useHeldKeys.ts';
