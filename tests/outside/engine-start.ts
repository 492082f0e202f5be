// paper reads `self` once, when it is imported. Without a working canvas (Node, jsdom) it would look for one and fail
// or pull jsdom in; a shadow `self` makes it start as it does in a web worker. Put back by restore().
const world = globalThis as { self?: unknown };
const before = Object.getOwnPropertyDescriptor(world, 'self');

function canvasWorks(): boolean {
  if (typeof document === 'undefined')
    return typeof (world as { WorkerGlobalScope?: unknown }).WorkerGlobalScope !== 'undefined';
  if (/jsdom|HappyDOM/i.test(navigator.userAgent)) return false;
  try {
    return document.createElement('canvas').getContext('2d') !== null;
  } catch {
    return false;
  }
}

const shadow = !canvasWorks();
if (shadow)
  Object.defineProperty(world, 'self', { value: { navigator: { userAgent: '' } }, configurable: true, writable: true });

export function restore(): void {
  if (!shadow) return;
  if (before) Object.defineProperty(world, 'self', before);
  else delete world.self;
}
