import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { type Dragged, useDrag } from '../../src/workbench/view/use-drag';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

type Told = [who: string, what: string, ...unknown[]];

const telling = (told: Told[], who: string, middle?: () => { x: number; y: number }): Dragged => ({
  ...(middle && { middle }),
  onTake: () => told.push([who, 'take']),
  onMove: ({ to, other, fine }) => told.push([who, 'move', to, other, fine]),
  onDrop: ({ pressed }) => told.push([who, 'drop', pressed]),
});

function Thing({ told }: { readonly told: Told[] }) {
  const { handlers, letGo } = useDrag(telling(told, 'thing', () => ({ x: 50, y: 50 })));
  return <button type="button" {...handlers} onKeyDown={letGo} />;
}

function Both({ told, thing = false }: { readonly told: Told[]; readonly thing?: boolean }) {
  const { handlers } = useDrag(telling(told, 'window'));
  return (
    <div data-testid="window" {...handlers}>
      {thing && <Thing told={told} />}
    </div>
  );
}

/** A window with a thing in it, and what is told of each. */
function shown({ frames = true }: { readonly frames?: boolean } = {}) {
  const told: Told[] = [];
  let waits: (() => void)[] = [];
  vi.stubGlobal('requestAnimationFrame', (draw: () => void) => waits.push(draw));
  vi.stubGlobal('cancelAnimationFrame', () => {
    waits = [];
  });
  const frame = () =>
    act(() => {
      for (const draw of waits.splice(0)) draw();
    });
  const { rerender } = render(<Both told={told} thing />);
  const hand = (element: HTMLElement) => {
    const go =
      (send: typeof fireEvent.pointerDown) =>
      (x: number, y: number, more = {}) => {
        send(element, { pointerId: 1, clientX: x, clientY: y, button: 0, ...more });
        if (frames) frame();
      };
    return {
      down: go(fireEvent.pointerDown),
      move: go(fireEvent.pointerMove),
      up: go(fireEvent.pointerUp),
      cancel: go(fireEvent.pointerCancel),
    };
  };
  const button = screen.getByRole('button');
  return {
    told,
    frame,
    thing: hand(button),
    window: hand(screen.getByTestId('window')),
    letGo: () => fireEvent.keyDown(button),
    takeAway: () => rerender(<Both told={told} />),
  };
}

it('moves a thing by its middle, from where it was taken, and not the paper under it', () => {
  const { told, thing } = shown();
  thing.down(53, 48);
  thing.move(73, 48, { shiftKey: true });
  thing.up(73, 48);
  expect(told).toEqual([
    ['thing', 'take'],
    ['thing', 'move', { x: 70, y: 50 }, undefined, true],
    ['thing', 'drop', false],
  ]);
});

it('takes a hand that hardly moves for a press of a thing', () => {
  const { told, thing } = shown();
  thing.down(50, 50);
  thing.move(53, 51);
  thing.up(53, 51);
  expect(told).toEqual([
    ['thing', 'take'],
    ['thing', 'drop', true],
  ]);
});

it('takes no drag that comes back for a press', () => {
  const { told, window } = shown();
  window.down(0, 0);
  window.move(40, 0);
  window.move(0, 0);
  window.up(0, 0);
  expect(told.at(-1)).toEqual(['window', 'drop', false]);
});

it('moves what is seen in a window at once, however little', () => {
  const { told, window } = shown();
  window.down(10, 10);
  window.move(11, 10);
  window.up(11, 10);
  expect(told.slice(1)).toEqual([
    ['window', 'move', { x: 11, y: 10 }, undefined, false],
    ['window', 'drop', true],
  ]);
});

it('is told where the other of two fingers is, and takes neither for a press', () => {
  const { told, window } = shown();
  window.down(10, 10);
  window.down(90, 10, { pointerId: 2 });
  window.move(99, 10, { pointerId: 2 });
  window.up(99, 10, { pointerId: 2 });
  window.up(10, 10);
  expect(told.slice(2)).toEqual([
    ['window', 'move', { x: 99, y: 10 }, { x: 10, y: 10 }, false],
    ['window', 'drop', false],
    ['window', 'drop', false],
  ]);
});

it('tells of a frame’s movements once, and of the last before it lets go', () => {
  const { told, thing, frame } = shown({ frames: false });
  thing.down(50, 50);
  thing.move(60, 50);
  thing.move(70, 50);
  frame();
  thing.move(80, 50);
  thing.up(80, 50);
  frame();
  expect(told.filter(([, what]) => what === 'move').map(([, , to]) => to)).toEqual([
    { x: 70, y: 50 },
    { x: 80, y: 50 },
  ]);
});

it('follows one pointer, by its first button', () => {
  const { told, thing } = shown();
  thing.down(50, 50, { button: 2 });
  expect(told).toEqual([]);
  thing.down(50, 50);
  thing.down(50, 50, { pointerId: 2 });
  thing.move(90, 50, { pointerId: 2 });
  expect(told.filter(([who]) => who === 'thing')).toEqual([['thing', 'take']]);
});

it('lets go when it is told to, when the browser takes the pointer and when the thing is taken away', () => {
  const { told, thing, letGo, takeAway } = shown();
  thing.down(50, 50);
  thing.move(90, 50);
  letGo();
  thing.move(120, 50);
  thing.up(120, 50);
  expect(told.filter(([, what]) => what === 'move').length).toBe(1);
  expect(told.filter(([, what]) => what === 'drop')).toEqual([]);
  thing.down(50, 50);
  thing.cancel(50, 50);
  expect(told.at(-1)).toEqual(['thing', 'drop', false]);
  thing.down(50, 50);
  takeAway();
  expect(told.slice(-2)).toEqual([
    ['thing', 'take'],
    ['thing', 'drop', false],
  ]);
});
