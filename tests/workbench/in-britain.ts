// Where a new project is in centimetres and prints on A4: Node and jsdom say that they are American, the oldest Node nothing.
const here = (globalThis as { readonly navigator?: Navigator }).navigator;
if (here) Object.defineProperty(here, 'language', { value: 'en-GB', configurable: true });

export {};
