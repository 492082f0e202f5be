import { wordShifts } from '../../../drawing';
import { useTable } from '../table-state';
import { seenSurroundings, seenWords, WORDS } from './seen';

/** While a wheel turns, words wait: so long after the last turn they are placed anew, ms. */
const SETTLED = 80;

/**
 * Keeps the words of the drawing off its lines and off each other: whenever the drawing or its scale has changed, and
 * before that is seen. While a button on it is held they stay where they are.
 *
 * @param table with the drawing and what lies over it
 * @returns what ends it
 */
export function keepWordsApart(table: HTMLElement): () => void {
  const drawing = table.querySelector('.drawing');
  if (!drawing || typeof MutationObserver === 'undefined' || !('getScreenCTM' in drawing)) return () => undefined;
  let timer = 0;
  let scale = '';
  const place = () => {
    clearTimeout(timer);
    if (useTable.getState().held !== undefined) return;
    scale = scaleOf(drawing);
    placeWords(drawing, table);
  };
  const later = () => {
    clearTimeout(timer);
    timer = window.setTimeout(place, SETTLED);
  };
  const observer = new MutationObserver((changes) => {
    const others = changes.filter(({ target, attributeName }) => attributeName !== 'style' || !isText(target));
    const drawn = others.some(({ target }) => target !== drawing);
    if (drawn) place();
    // Moved and not zoomed, all of it stays as it lies.
    else if (others.length > 0 && scaleOf(drawing) !== scale) later();
  });
  const attributeFilter = ['d', 'transform', 'style', 'data-far'];
  observer.observe(drawing, { subtree: true, childList: true, characterData: true, attributeFilter });
  // What lies over the drawing comes and goes, and show mode has larger letters.
  const around = new ResizeObserver(later);
  for (const over of [table, ...table.children]) around.observe(over);
  const unsubscribe = useTable.subscribe(({ held }, before) => {
    if (held === undefined && before.held !== undefined) later();
  });
  void document.fonts?.ready.then(later);
  place();
  return () => {
    clearTimeout(timer);
    observer.disconnect();
    around.disconnect();
    unsubscribe();
  };
}

const isText = (node: Node): boolean => node instanceof SVGTextElement;

const scaleOf = (drawing: Element): string => (drawing as SVGElement).style.getPropertyValue('--unzoomed');

function placeWords(drawing: Element, table: Element): void {
  const all = [...drawing.querySelectorAll<SVGTextElement>(WORDS)];
  for (const { style } of all) {
    style.removeProperty('translate');
    style.removeProperty('visibility');
  }
  const words = seenWords(drawing);
  if (words.length === 0) return;
  const shifts = wordShifts(words, seenSurroundings(drawing, table));
  words.forEach(({ text, scale }, i) => {
    const shift = shifts[i];
    if (!shift) text.style.visibility = 'hidden';
    else if (shift.x !== 0 || shift.y !== 0) text.style.translate = `${shift.x / scale}px ${shift.y / scale}px`;
  });
}
