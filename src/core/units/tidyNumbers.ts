/** Digits with points and commas, as one number or none. */
const NUMBER = /\d[\d.,]*|[.,]\d[\d.,]*/g;
const ONE_COMMA_OR_POINT = /^\d*(?:[.,]\d*)?$/;
const COULD_BE_THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;
const COMMA_GROUPS = /^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/;
const POINT_GROUPS = /^\d{1,3}(?:\.\d{3})+,\d+$|^\d{1,3}(?:\.\d{3}){2,}$/;
/** 10 000 as ISO 80000-1 writes it; 1 100/3 is a mixed number and not meant. */
const SPACED_GROUPS = /(?<![\d.,])\d{1,3}(?: \d{3})+(?![\d/])/g;

export type TidyNumbers =
  | { readonly how: 'read'; readonly text: string }
  /** `1,500` can be one and a half or fifteen hundred. */
  | { readonly how: 'ambiguous'; readonly number: string }
  | { readonly how: 'unreadable'; readonly number: string };

/**
 * Writes every number of a tidied text with a decimal point and without grouping: decimal comma, `1,234.5`, `1.234,5`,
 * `10 000`. A single comma before exactly three digits is ambiguous and said so, unless the number begins with 0.
 *
 * Example: `tidyNumbers('6,8 uF')` reads '6.8 uF'.
 */
export function tidyNumbers(tidied: string): TidyNumbers {
  const joined = tidied.replace(SPACED_GROUPS, (groups) => groups.replaceAll(' ', ''));
  let trouble: TidyNumbers | null = null;
  const text = joined.replace(NUMBER, (number) => {
    if (COULD_BE_THOUSANDS.test(number)) trouble ??= { how: 'ambiguous', number };
    if (ONE_COMMA_OR_POINT.test(number)) return number.replace(',', '.');
    if (COMMA_GROUPS.test(number)) return number.replaceAll(',', '');
    if (POINT_GROUPS.test(number)) return number.replaceAll('.', '').replace(',', '.');
    trouble ??= { how: 'unreadable', number };
    return number;
  });
  return trouble ?? { how: 'read', text };
}
