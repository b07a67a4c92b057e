// expression.ts is not listed: it carries mathjs and is fetched by parseQuantity when it is first needed.
export * from './characteristicSensitivity.ts';
export * from './effectiveRange.ts';
export * from './exactInch.ts';
export { fromInside, requireUnit, toInside, unitsOf } from './findUnit.ts';
export * from './formatInchFraction.ts';
export * from './formatNumber.ts';
export * from './formatQuantity.ts';
export * from './letterCode.ts';
export * from './nearestPreferred.ts';
export * from './parseQuantity.ts';
export { parseQuantityNow } from './parseQuantityNow.ts';
export * from './plotProportions.ts';
export * from './preferredSeries.ts';
export * from './quantityKind.ts';
export * from './ratedImpedance.ts';
export * from './standardBands.ts';
export * from './stepPreferred.ts';
export * from './toleranceLetters.ts';
