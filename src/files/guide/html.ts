import { INK } from '../../drawing';
import type { Draft } from '../../project';
import { own, spokenLanguage, words } from '../../words';
import type { Row } from '../content/rows';
import { type Guide, type GuideStep, guideContent } from './content';
import { escapedText, pictureSvg } from './svg';

/**
 * The sewing guide as one web page that needs nothing else: no script, no font, no picture from elsewhere.
 *
 * @param draft the finished draft
 */
export function writeGuideHtml(draft: Draft): string {
  const guide = guideContent(draft);
  const e = escapedText;
  return `<!doctype html>
<html lang="${spokenLanguage()}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${e(words`${own(guide.title)}: how to sew it`)}</title>
<style>${STYLE}</style>
</head>
<body>
<header><h1>${e(guide.title)}</h1><p>${e(guide.under)}</p></header>
<main>
<div class="start"><figure>${pictureSvg(guide.pair, 'pair', guide.units)}</figure>
<section><h2>${e(words`Finished measures`)}</h2>${rows(guide.finished)}<p>${e(guide.time)}</p></section></div>
<section><h2>${e(words`All steps at a glance`)}</h2><ol class="way">${guide.parts.flatMap(({ steps }) => steps.map(wayItem)).join('')}</ol></section>
<div class="pair"><section><h2>${e(words`To buy`)}</h2>
<dl>${guide.shopping.map(({ name, value, note }) => `<dt>${e(name)}</dt><dd>${e(value)}${note === '' ? '' : `<br><small>${e(note)}</small>`}</dd>`).join('')}</dl></section>
<section><h2>${e(words`Cut`)}</h2>${rows(guide.cut)}</section>
<section><h2>${e(words`Your choices`)}</h2>${list(guide.chosen)}</section>
<section><h2>${e(words`Safety`)}</h2>${list(guide.safety)}</section></div>
<section><h2>${e(words`The lay`)}</h2><div class="lay">${guide.lay ? `<figure>${pictureSvg(guide.lay, 'lay', guide.units)}</figure>` : `<p>${e(guide.noLay)}</p>`}
<div>${guide.laid.length === 0 ? '' : `<h3>${e(words`Where each piece lies`)}</h3>${rows(guide.laid)}`}<h3>${e(words`On other widths`)}</h3>${rows(guide.widths)}</div></div></section>
<section><h2>${e(words`Sewing`)}</h2><figure class="key">${pictureSvg(guide.key, 'key', guide.units)}</figure></section>
${guide.parts.map((part) => partSection(part, guide)).join('\n')}
<section><h2>${e(words`Sources`)}</h2>${guide.sources.map((source) => `<p>${e(source)}</p>`).join('')}</section>
</main>
</body>
</html>
`;
}

function partSection({ name, steps }: Guide['parts'][number], guide: Guide): string {
  return `<section><h2>${escapedText(name)}</h2>\n${steps.map((step) => stepArticle(step, guide)).join('\n')}\n</section>`;
}

/** A step in small: the picture that stands in its place below, once more. */
function wayItem({ number, title, picture: { box } }: GuideStep): string {
  const size = `0 0 ${Math.round(box.right - box.left)} ${Math.round(box.bottom - box.top)}`;
  return `<li><a href="#step-${number}"><svg viewBox="${size}" aria-hidden="true"><use href="#p${number}"/></svg>${escapedText(title)}</a></li>`;
}

function stepArticle(step: GuideStep, { units }: Guide): string {
  const e = escapedText;
  const settings = step.settings.map(({ name, value }) => `<dt>${e(name)}</dt><dd>${e(value)}</dd>`);
  return `<article id="step-${step.number}">
<figure>${pictureSvg(step.picture, `p${step.number}`, units)}</figure>
<div><h3>${step.number}. ${e(step.title)}</h3>
${step.care === '' ? '' : `<p class="care"><b>${e(words`Take care:`)}</b> ${e(step.care)}</p>`}
<ol>${step.tasks.map((task) => `<li>${e(task)}</li>`).join('')}</ol>
${step.why === '' ? '' : `<p class="why"><b>${e(words`Why:`)}</b> ${e(step.why)}</p>`}
${settings.length === 0 ? '' : `<dl class="settings">${settings.join('')}</dl>`}
<p class="check"><b>${e(words`Check:`)}</b> ${e(step.check)}</p></div>
</article>`;
}

const list = (sentences: readonly string[]): string =>
  `<ul>${sentences.map((sentence) => `<li>${escapedText(sentence)}</li>`).join('')}</ul>`;
const rows = (all: readonly Row[]): string =>
  `<dl>${all.map(({ name, value }) => `<dt>${escapedText(name)}</dt><dd>${escapedText(value)}</dd>`).join('')}</dl>`;

const STYLE = `body{margin:0 auto;max-width:62rem;padding:1.5rem;background:#faf6ee;color:${INK.cut};font:1rem/1.45 system-ui,sans-serif}
h1,h2,h3{line-height:1.2;margin:0}h1{font-size:1.9rem}h2{margin-top:2rem;padding-bottom:.25rem;border-bottom:1px solid #ddd2bd}h3{margin-bottom:.4rem}
header p,small{color:${INK.quietWords}}figure{margin:0;background:#fff;border:1px solid #ddd2bd;border-radius:.5rem;padding:.5rem}
.key{max-width:20rem}svg{display:block;width:100%;max-height:24rem;font-family:system-ui,sans-serif}
article{display:grid;grid-template-columns:minmax(15rem,24rem) 1fr;gap:1.25rem;margin:1.25rem 0;break-inside:avoid}
ol,ul{margin:.4rem 0;padding-left:1.3rem}li{margin:.2rem 0}p{margin:.5rem 0}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.15rem 1rem;margin:.5rem 0}dd{margin:0}.pair{display:grid;grid-template-columns:repeat(auto-fit,minmax(18rem,1fr));gap:0 2rem}
.start,.lay{display:grid;grid-template-columns:minmax(15rem,5fr) 6fr;gap:1.25rem;margin-top:1.25rem}.start h2{margin-top:0}
.way{display:grid;grid-template-columns:repeat(auto-fill,minmax(6.5rem,1fr));gap:.75rem;padding:0;list-style:none;counter-reset:way}.way li{counter-increment:way;font-size:.85rem}
.way a{color:inherit;text-decoration:none}.way a::before{content:counter(way) ". "}.way svg{height:5rem;margin-bottom:.25rem;--words:0}text{opacity:var(--words,1)}
.care{border-left:.25rem solid #a6403a;padding-left:.6rem}.why{font-style:italic}
@media(max-width:44rem){article,.start,.lay{grid-template-columns:1fr}}
@media print{body{background:#fff;max-width:none;padding:0;font-size:9.5pt}h2{break-after:avoid}}`;
