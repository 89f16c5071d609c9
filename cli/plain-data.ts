/** Whether a value is data through and through, so that a copy is as good as the thing: no functions, no objects of a class. */
export function plainData(value: unknown): boolean {
  if (typeof value === 'function' || typeof value === 'symbol') return false;
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every(plainData);
  const prototype: unknown = Object.getPrototypeOf(value);
  return (prototype === Object.prototype || prototype === null) && Object.getOwnPropertySymbols(value).length === 0 && Object.values(value).every(plainData);
}
