import { LAYOUT_WORDS } from '../../cloth';
import { LENGTH_NAMES } from '../../leg';
import { checksOf, type Draft, printDay, type Station } from '../../project';
import { isBrought, SOURCE_NAMES } from '../../trace';
import { dated, inTurn, mm, number, own, type Phrase, say, UNSAID } from '../../words';
import { toldSheets } from '../store/told-sheets';
import { passing } from './rows';

const WAISTS: Readonly<Record<Draft['project']['waist']['finish'], Phrase>> = {
  elasticCasing: say`elastic casing`,
  drawstringCasing: say`drawstring casing`,
  elasticAndDrawstring: say`elastic and drawstring`,
  separateCasing: say`casing of its own`,
  knitBand: say`knit band`,
  facedCasing: say`faced casing`,
};

const HEMS: Readonly<Record<Draft['project']['hem']['finish'], Phrase>> = {
  turned: say`hem turned`,
  elasticCasing: say`elastic hem`,
  drawstringCasing: say`drawstring hem`,
  contrastBand: say`hem band`,
  ribCuff: say`rib cuff`,
  facedHem: say`hem faced`,
};

/** A crotch length this near to the wanted one counts as reached: the draft’s own promise. */
const CROTCH_REACHED = 1;

/** What each station came to, in one line: what a closed stop says. */
export const RESULTS: Readonly<Record<Station, (draft: Draft) => Phrase>> = {
  body({ body }) {
    const taken = say`waist ${mm(body.waistGirth)} · hip ${mm(body.hipGirth)} · rise ${mm(body.bodyRise)} · inside leg ${mm(body.insideLeg)}`;
    return dotted(taken, body.remarks.length > 0 && say`${number(body.remarks.length, 0)} doubtful`);
  },
  blocks({ blocks, measures, project }) {
    if (isBrought(project.block)) return SOURCE_NAMES[project.block.source];
    if (blocks.crotchWanted === undefined) return say`drafted · crotch length not measured`;
    const miss = Math.abs(measures.crotchFit);
    if (miss < CROTCH_REACHED) return say`drafted · crotch length reached`;
    return say`drafted · crotch length missed by ${mm(miss)}`;
  },
  leg({ project, measures }) {
    const { length } = project.leg;
    const name = typeof length === 'string' ? say`${LENGTH_NAMES[length]}` : say`inseam ${mm(length.inseam)}`;
    return say`${name}, spread ${mm(measures.spread)}, opening ${passing(measures)}`;
  },
  edges: ({ project: { waist, hem, allowances } }) =>
    dotted(WAISTS[waist.finish], HEMS[hem.finish], say`allowance ${mm(allowances.inseam)}`),
  check(draft) {
    const count = (verdict: string) => checksOf(draft).filter((check) => check.verdict === verdict).length;
    const [good, doubtful, wrong] = [count('good'), count('doubtful'), count('wrong')];
    return dotted(
      say`${number(good, 0)} good`,
      doubtful > 0 && say`${number(doubtful, 0)} doubtful`,
      wrong > 0 && say`${number(wrong, 0)} wrong`,
    );
  },
  // What is chosen, and not the lay: a closed stop is told anew at every change, and a lay takes longer than a frame.
  cloth({ project: { cloth } }) {
    const wide = say`${mm(cloth.width)} wide`;
    const lies = cloth.layout === 'best' ? UNSAID : say`${LAYOUT_WORDS[cloth.layout]}`;
    const way = cloth.oneWay ? say`one direction (nap)` : UNSAID;
    return dotted(inTurn([wide, lies, way], ', '), cloth.washFirst && say`washed first`);
  },
  paper(draft) {
    const { project } = draft;
    const { lastPrint } = project;
    // Which of them can be kept takes longer than a frame, and is told where the station is open.
    if (lastPrint) {
      const was = own(dated(printDay(lastPrint)));
      return say`last saved for printing on ${was}, on ${number(lastPrint.sheets.length, 0)} sheets ${own(lastPrint.paper.name)}`;
    }
    const scale = project.paper.scale === 1 ? say`true size` : say`scale ${number(project.paper.scale, 3)}`;
    const sheets = toldSheets(draft);
    if (!sheets) return scale;
    const many = sheets.sheets.length;
    const name = own(sheets.paper.name);
    return dotted(
      many === 1 ? say`1 sheet ${name} and a first sheet` : say`${number(many, 0)} sheets ${name} and a first sheet`,
      scale,
    );
  },
  // Not the steps: they are made when somebody opens the station.
  sew: ({ project: { sewing } }) =>
    sewing.machine === 'serger' ? say`step by step, with an overlocker` : say`step by step, on a plain machine`,
};

/** What a station came to, with a dot between. */
const dotted = (...parts: readonly (Phrase | false)[]): Phrase =>
  inTurn(
    parts.filter((part) => part !== false),
    ' · ',
  );
