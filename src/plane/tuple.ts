/** Each of a fixed number of values mapped, as many as there were: what an array's own map forgets. */
export const mapTuple = <const All extends readonly unknown[], Made>(
  all: All,
  make: (one: All[number], i: number) => Made,
): { readonly [Place in keyof All]: Made } => all.map(make) as { readonly [Place in keyof All]: Made };
