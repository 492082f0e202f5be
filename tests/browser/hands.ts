import type { CDPSession, Locator, Page } from 'playwright-core';

/** One way to work the page. */
export interface Hands {
  press(what: Locator): Promise<void>;
  /** Puts a text into a field in place of what stands there. */
  write(field: Locator, text: string): Promise<void>;
  /** Picks one of a switch. */
  pick(radio: Locator): Promise<void>;
  /** Chooses from a list by what is written in it. */
  choose(list: Locator, name: string): Promise<void>;
  /** Draws a yellow button over the drawing by so many pixels. */
  draw(handle: Locator, dx: number, dy: number): Promise<void>;
  /** Slides a slider to its upper end. */
  slideUp(slider: Locator): Promise<void>;
}

export function mouse(page: Page): Hands {
  return {
    press: (what) => what.click(),
    write: (field, text) => field.fill(text),
    pick: (radio) => radio.check(),
    choose: async (list, name) => void (await list.selectOption({ label: name })),
    async draw(handle, dx, dy) {
      const { x, y } = await middleOf(handle);
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + dx, y + dy, { steps: 4 });
      await nextFrame(page);
      await page.mouse.up();
    },
    async slideUp(slider) {
      const { x, y } = await middleOf(slider);
      const box = await slider.boundingBox();
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + (box?.width ?? 0), y, { steps: 3 });
      await page.mouse.up();
    },
  };
}

/** A finger; the page must have been opened with touch. */
export async function finger(page: Page): Promise<Hands> {
  const touch = await page.context().newCDPSession(page);
  const draw = async (handle: Locator, dx: number, dy: number) => {
    await handle.scrollIntoViewIfNeeded();
    const { x, y } = await middleOf(handle);
    await touchAt(touch, 'touchStart', x, y);
    for (let i = 1; i <= 4; i += 1) await touchAt(touch, 'touchMove', x + (dx * i) / 4, y + (dy * i) / 4);
    await fingerLifted(page, touch);
  };
  return {
    press: (what) => what.tap(),
    async write(field, text) {
      await field.tap();
      await field.fill(text);
    },
    // The finger meets the words that lie over the radio button.
    pick: (radio) => radio.locator('..').tap(),
    choose: async (list, name) => void (await list.selectOption({ label: name })),
    draw,
    slideUp: async (slider) => draw(slider, (await slider.boundingBox())?.width ?? 0, 0),
  };
}

/** Keys alone: Tab to get somewhere, and there what a keyboard has. */
export function keys(page: Page): Hands {
  const press = (key: string) => page.keyboard.press(key);
  const reach = async (what: Locator) => {
    await what.waitFor({ state: 'attached' });
    for (let i = 0; i < 250; i += 1) {
      const way = await what.evaluate((element) => {
        const { activeElement } = document;
        if (element === activeElement) return 'there';
        const after = activeElement?.compareDocumentPosition(element) ?? Node.DOCUMENT_POSITION_FOLLOWING;
        return after & Node.DOCUMENT_POSITION_FOLLOWING ? 'Tab' : 'Shift+Tab';
      });
      if (way === 'there') return;
      await press(way);
    }
    throw new Error(`the Tab key does not come to ${what}`);
  };
  return {
    async press(what) {
      await reach(what);
      await press('Enter');
    },
    async write(field, text) {
      await reach(field);
      await press('ControlOrMeta+a');
      await page.keyboard.type(text);
    },
    async pick(radio) {
      // Only the one that is chosen can be tabbed to; from there the arrows go round.
      const name = await radio.getAttribute('name');
      await reach(page.locator(`input[name="${name}"]:checked`));
      for (let i = 0; i < 4 && !(await radio.isChecked()); i += 1) await press('ArrowRight');
    },
    async choose(list, name) {
      await reach(list);
      await page.keyboard.type(name);
    },
    async draw(handle, dx, dy) {
      await reach(handle);
      await press(dx + dy < 0 ? 'Shift+ArrowLeft' : 'Shift+ArrowRight');
    },
    async slideUp(slider) {
      await reach(slider);
      await press('End');
    },
  };
}

/** The middle of something on the screen, pixels. */
export async function middleOf(what: Locator): Promise<{ x: number; y: number }> {
  const box = await what.boundingBox();
  if (!box) throw new Error('it is not on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export async function touchAt(touch: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', x = 0, y = 0) {
  await touch.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x, y }] });
}

/** A finger that rests and is lifted: lifted in a swing, it would make Chromium swallow the next tap, to stop the swing. */
export async function fingerLifted(page: Page, touch: CDPSession): Promise<void> {
  await page.waitForTimeout(REST);
  await touchAt(touch, 'touchEnd');
  await page.waitForTimeout(REST);
}

/** Longer than a swing's last moves count, milliseconds. */
const REST = 150;

const nextFrame = (page: Page) => page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(0))));
