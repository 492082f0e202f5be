import type { ReactNode } from 'react';

/** Inputs that belong together, under one small name. */
export function Group({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <fieldset className="group">
      <legend>{name}</legend>
      {children}
    </fieldset>
  );
}
