let started: Promise<paper.PaperScope> | undefined;

/**
 * The vector engine `paper`, started at the first call: for what others drew and for what tests compare with, never for
 * the first drawing or in a drag. None of its objects leaves this room: plain data goes in and comes out.
 *
 * What it takes to start it without a canvas, in Node, jsdom and a worker alike:
 * - the core alone is loaded: the whole package brings an interpreter and, in Node, a DOM;
 * - while it loads it looks for a canvas by `self`; where there is none, a bare `self` lets it start as in a worker;
 * - one scope serves all, since an item belongs to the scope that is active, whoever made it;
 * - what is made is put into no project, where it would be held for ever;
 * - its view draws nothing: the timer of that would keep a Node process alive.
 */
export const loadEngine = (): Promise<paper.PaperScope> => {
  started ??= engineStarted();
  return started;
};

async function engineStarted(): Promise<paper.PaperScope> {
  const { default: paper } = await withBareSelf(() => import('paper/dist/paper-core.js'));
  const scope = new paper.PaperScope();
  scope.setup(new paper.Size(1, 1));
  scope.settings.insertItems = false;
  scope.view.autoUpdate = false;
  return scope;
}

async function withBareSelf<T>(load: () => Promise<T>): Promise<T> {
  const world = globalThis as { self?: unknown };
  if (typeof document === 'undefined' ? 'WorkerGlobalScope' in world : canvasWorks()) return load();
  const before = Object.getOwnPropertyDescriptor(world, 'self');
  Object.defineProperty(world, 'self', { value: { navigator: { userAgent: '' } }, configurable: true });
  try {
    return await load();
  } finally {
    delete world.self;
    if (before) Object.defineProperty(world, 'self', before);
  }
}

const canvasWorks = (): boolean =>
  !/jsdom/i.test(navigator.userAgent) && document.createElement('canvas').getContext('2d') !== null;
