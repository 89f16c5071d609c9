/** A point of a pattern, mm. */
export type Point = readonly [x: number, y: number];

export type SumValue = number | string | readonly number[] | readonly Point[];

/** The arguments of a sum, read and checked; asking for one that was not declared, or not given, is a fault of the sum. */
export class SumValues {
  constructor(private readonly values: ReadonlyMap<string, SumValue>) {}

  has(name: string): boolean {
    return this.values.has(name);
  }

  number(name: string): number {
    const value = this.values.get(name);
    if (typeof value !== 'number') throw new RangeError(`argument ${name} is not a number`);
    return value;
  }

  text(name: string): string {
    const value = this.values.get(name);
    if (typeof value !== 'string') throw new RangeError(`argument ${name} is not a text`);
    return value;
  }

  numbers(name: string): readonly number[] {
    const value = this.values.get(name);
    if (!Array.isArray(value)) throw new RangeError(`argument ${name} is not a list`);
    return value as readonly number[];
  }

  points(name: string): readonly Point[] {
    const value = this.values.get(name);
    if (!Array.isArray(value)) throw new RangeError(`argument ${name} is not a list of points`);
    return value as readonly Point[];
  }

  numberOr<T>(name: string, otherwise: T): number | T {
    return this.has(name) ? this.number(name) : otherwise;
  }

  textOr<T>(name: string, otherwise: T): string | T {
    return this.has(name) ? this.text(name) : otherwise;
  }
}
