import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { writeGuideHtml } from '../../../src/files/guide/html';
import { openProject } from '../../../src/project';
import { draftOf } from '../drafts';

const example = (file: string) =>
  readFileSync(fileURLToPath(new URL(`../../../docs/examples/${file}`, import.meta.url)), 'utf8');

/** The words alone: how the last decimal of a curve is rounded is no matter of the guide. */
const words = (html: string) => html.replace(/<svg.*?<\/svg>/gs, '').replace(/<style>.*?<\/style>/gs, '');

describe('the guides in docs/examples', () => {
  // To renew them: npm run --silent draft -- docs/examples/NAME.legwork.json --out docs/examples --files guide-html
  it.each(['flannel-bottoms', 'knit-cropped', 'child-short'])('%s says what the program says today', (name) => {
    const opened = openProject(example(`${name}.legwork.json`));
    if (!opened.ok) throw new Error(`${name} can't be opened`);
    const today = writeGuideHtml(draftOf(opened.value));
    expect(words(today)).toBe(words(example(`${name}.guide.html`)));
    expect(today.match(/<svg/g)?.length).toBe(example(`${name}.guide.html`).match(/<svg/g)?.length);
  });
});
