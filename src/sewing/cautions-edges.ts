import { CORD_ENDS, gatheredEnd } from '../body';
import type { Mm } from '../length';
import { inTurn, mm, say, UNSAID } from '../words';
import type { Caution, CautionChoices, CautionMeasures, CautionSource } from './caution';
import { type Wearer, wearerOf } from './wearer';

/** Each end outside the channel (ASTM F1816, 16 CFR 1120.3): 3 in. */
const US_END: Mm = 76.2;

const EN_14682: CautionSource = {
  document: 'EN 14682:2007 (its edition of 2014 was not read)',
  clause: '',
  sure: 'quoted',
};

/** The cautions about cords, and about elastic that holds for hours. */
export function edgeCautions(choices: CautionChoices, measures: CautionMeasures): readonly Caution[] {
  const wearer = wearerOf(choices.body);
  const { cordEnds, hemCords, elastic, hemElastic } = choices;
  return [
    ...(cordEnds !== undefined && wearer.cordRules
      ? [
          waistCord(wearer, cordEnds, gatheredEnd(cordEnds, measures.waistOpening, choices.body.waistGirth)),
          cordOutside(wearer, cordEnds),
        ]
      : []),
    ...(hemCords && wearer.cordRules ? [hemCord(wearer)] : []),
    ...(elastic || hemElastic ? [tightElastic(elastic ? 'waist' : 'hem')] : []),
  ];
}

function waistCord({ words, young, field }: Wearer, ends: Mm, gathered: Mm): Caution {
  const long = ends > CORD_ENDS.widest || gathered > CORD_ENDS.gathered;
  return {
    id: 'waist-cord',
    title: say`Waist cord`,
    sentence: inTurn([
      long
        ? say`For ${words}: each end may hang free by ${mm(CORD_ENDS.widest)} with the waist at its widest, and by ${mm(CORD_ENDS.gathered)} gathered; here it is ${mm(ends)} and ${mm(gathered)}, too long: shorten the cord, or choose elastic.`
        : say`For ${words}: each end may hang free by ${mm(CORD_ENDS.widest)} with the waist at its widest, and by ${mm(CORD_ENDS.gathered)} gathered; here it is ${mm(ends)} and ${mm(gathered)}, within that.`,
      say`No knots or toggles, no cord at the back; sew it down midway.`,
      young ? say`Under seven years the rule is stricter: elastic is the better choice.` : UNSAID,
    ]),
    source: EN_14682,
    raisedBy: ['waist.finish', field],
  };
}

const cordOutside = ({ words, field }: Wearer, ends: Mm): Caution => ({
  id: 'cord-outside',
  title: say`Cord outside its channel`,
  sentence: say`For ${words}, a rule for children’s outerwear in the United States allows ${mm(US_END)} of cord outside the channel, without toggles and sewn down; here it is ${mm(ends)}. It is a sensible measure for trousers too.`,
  source: { document: 'ASTM F1816; 16 CFR 1120.3', clause: '', sure: 'read' },
  raisedBy: ['waist.finish', field],
});

const hemCord = ({ words, field }: Wearer): Caution => ({
  id: 'hem-cord',
  title: say`Cord at the hem`,
  sentence: say`For ${words}: at an ankle-length hem the cord has to lie wholly inside when it is drawn up. Elastic does the same without ends to step on.`,
  source: EN_14682,
  raisedBy: ['hem.finish', field],
});

const tightElastic = (at: 'waist' | 'hem'): Caution => ({
  id: 'elastic-tightness',
  title: say`Elastic`,
  sentence: say`Close the elastic with a pin and try it on before it is sewn: two fingers pass under it, and sitting for a while leaves no mark.`,
  source: { document: 'practice', clause: '', sure: 'practice' },
  raisedBy: [`${at}.elasticWidth`],
});
