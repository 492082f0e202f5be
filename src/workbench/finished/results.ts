import { LAYOUT_WORDS } from '../../cloth';
import { LENGTH_NAMES } from '../../leg';
import { formatLength, plain, type Units } from '../../length';
import { checksOf, type Draft, sheetsOf } from '../../project';
import { printPhrase, words } from '../../words';
import type { Station } from '../store/stations';
import { passing } from './rows';

const WAISTS: Readonly<Record<Draft['project']['waist']['finish'], string>> = {
  elasticCasing: 'elastic casing',
  drawstringCasing: 'drawstring casing',
  elasticAndDrawstring: 'elastic and drawstring',
  separateCasing: 'casing of its own',
  knitBand: 'knit band',
  facedCasing: 'faced casing',
};

const HEMS: Readonly<Record<Draft['project']['hem']['finish'], string>> = {
  turned: 'hem turned',
  elasticCasing: 'elastic hem',
  drawstringCasing: 'drawstring hem',
  contrastBand: 'hem band',
  ribCuff: 'rib cuff',
  facedHem: 'hem faced',
};

/** A crotch length this near to the wanted one counts as reached: the draft’s own promise. */
const CROTCH_REACHED = 1;

/** What each station came to, in one line: what a closed stop says. */
export const RESULTS: Readonly<Record<Station, (draft: Draft, units: Units) => string>> = {
  body({ body }, units) {
    const l = (value: number) => formatLength(value, units);
    return `waist ${l(body.waistGirth)} · hip ${l(body.hipGirth)} · rise ${l(body.bodyRise)} · inside leg ${l(body.insideLeg)}${body.remarks.length > 0 ? ` · ${body.remarks.length} to mind` : ''}`;
  },
  blocks({ blocks, measures, project }, units) {
    if (project.block.source === 'traced') return 'brought along';
    if (blocks.crotchWanted === undefined) return 'drafted · crotch length not measured';
    const miss = Math.abs(measures.crotchFit);
    if (miss < CROTCH_REACHED) return 'drafted · crotch length reached';
    return `drafted · crotch length missed by ${formatLength(miss, units)}`;
  },
  leg({ project, measures }, units) {
    const { length } = project.leg;
    const name =
      typeof length === 'string' ? words`${LENGTH_NAMES[length]}` : `inseam ${formatLength(length.inseam, units)}`;
    const opening = printPhrase(passing(measures), units);
    return `${name}, spread ${formatLength(measures.spread, units)}, opening ${opening}`;
  },
  edges({ project: { waist, hem, allowances } }, units) {
    return `${WAISTS[waist.finish]} · ${HEMS[hem.finish]} · allowance ${formatLength(allowances.inseam, units)}`;
  },
  check(draft) {
    const count = (verdict: string) => checksOf(draft).filter((check) => check.verdict === verdict).length;
    const [good, mind, wrong] = [count('good'), count('mind'), count('wrong')];
    return [`${good} good`, mind > 0 && `${mind} to mind`, wrong > 0 && `${wrong} wrong`].filter(Boolean).join(' · ');
  },
  // What is chosen, and not the lay: a closed stop is told anew at every change, and a lay takes longer than a frame.
  cloth({ project: { cloth } }, units) {
    const lies = cloth.layout === 'best' ? '' : `, ${words`${LAYOUT_WORDS[cloth.layout]}`}`;
    return `${formatLength(cloth.width, units)} wide${lies}${cloth.oneWay ? ', one way' : ''}${cloth.washFirst ? ' · washed first' : ''}`;
  },
  paper(draft) {
    const { project } = draft;
    const sheets = sheetsOf(draft);
    const many = sheets.sheets.length;
    const scale = project.paper.scale === 1 ? 'true size' : `scale ${plain(project.paper.scale, 3)}`;
    return `${many} ${many === 1 ? 'sheet' : 'sheets'} ${sheets.paper.name} and a first sheet · ${scale}`;
  },
  // Not the steps: they are made when somebody opens the station.
  sew({ project: { sewing } }) {
    return sewing.machine === 'serger' ? 'step by step, with a serger' : 'step by step, on a plain machine';
  },
};
