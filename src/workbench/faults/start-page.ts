import { download } from '../save/download';
import { faultDetails } from './fault';
import { keptRaw, rawProjects } from './kept-raw';
import { whyNotLoaded } from './newer';

/** As many are offered one by one; all of them are in the one file. */
const MOST = 12;

/**
 * Where the workbench could not be started at all, or could not even say that it failed: plain elements, made without
 * anything that may be what is broken. What is kept on this computer can be taken away from here.
 *
 * @param root the place of the workbench
 */
export function showStartFault(root: HTMLElement, thrown: unknown): void {
  const words = element('p');
  words.setAttribute('role', 'alert');
  const strong = element('strong', 'Legwork can’t be started, by a fault in it.');
  words.append(strong, ' Your projects are not to blame, and nothing of them is lost.');
  const ways = element('div');
  ways.className = 'fault-ways';
  const reload = button('Try again', () => location.reload());
  ways.append(reload);
  const pre = element('pre', faultDetails({ what: 'the start', thrown, at: new Date() }));
  pre.tabIndex = 0;
  const details = element('details');
  details.className = 'fault-details';
  const save = button('save the details', () => download(pre.textContent ?? '', 'text/plain', 'legwork-fault.txt'));
  save.className = 'plain-link';
  details.append(element('summary', 'Details of the error'), pre, save);
  const card = element('div');
  card.className = 'fault';
  card.append(words, ways, details);
  const page = element('main');
  page.className = 'fault-page';
  const title = element('h1', 'Legwork');
  title.className = 'bar-product';
  page.append(title, card);
  root.replaceChildren(page);
  void whyNotLoaded().then((why) => {
    if (why === 'newer') {
      strong.textContent = 'A newer Legwork is here.';
      reload.textContent = 'Use it now';
    } else if (why === 'away') {
      strong.textContent = 'Legwork could not be loaded: is the network away?';
    }
  });
  void keptRaw().then((all) => offerKept(ways, all));
}

function offerKept(ways: HTMLElement, all: ReadonlyMap<string, unknown>): void {
  if (all.size === 0) return;
  for (const { id, name, text } of rawProjects(all).slice(0, MOST)) {
    const file = `${id.replace(/[^a-z0-9]/gi, '')}.legwork.json`;
    ways.append(button(`Save “${name.slice(0, 80)}” as a file`, () => download(text, 'application/json', file)));
  }
  const everything = () =>
    download(JSON.stringify(Object.fromEntries(all), null, 2), 'application/json', 'everything-kept.json');
  ways.append(button('Save everything that is kept', everything));
}

function element<Name extends keyof HTMLElementTagNameMap>(name: Name, words = ''): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  made.textContent = words;
  return made;
}

function button(words: string, act: () => void): HTMLButtonElement {
  const made = element('button', words);
  made.type = 'button';
  made.className = 'button';
  made.addEventListener('click', act);
  return made;
}
