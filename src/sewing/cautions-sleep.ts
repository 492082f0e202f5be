import { mm, say } from '../words';
import type { Caution, CautionChoices, CautionMeasures } from './caution';
import { type Wearer, wearerOf } from './wearer';

/** No piece of an infant's two-piece garment is longer (15¾ in). */
const INFANT_LONGEST = 400;

/** The cautions for what is slept in, unless it is said not to be, and of what is sewn for children, who sleep in what they lounge in. */
export function sleepCautions(choices: CautionChoices, measures: CautionMeasures): readonly Caution[] {
  const wearer = wearerOf(choices.body);
  const mayBeSleptIn = choices.forSleeping !== false;
  return [
    ...(mayBeSleptIn ? [fire] : []),
    ...(wearer.sleepwearRules ? [mayBeSleptIn ? sleepwear(wearer) : loungewear(wearer)] : []),
    ...(wearer.infant ? [infant(wearer, measures)] : []),
    ...(wearer.labelRules && mayBeSleptIn ? [label(wearer)] : []),
  ];
}

const fire: Caution = {
  id: 'loose-and-fire',
  title: say`Fire`,
  sentence: say`Loose cotton, and napped flannel most of all, catches fire easily and burns fast, on adults too: keep away from open flames, stoves and heaters.`,
  source: { document: 'practice', clause: '', sure: 'practice' },
  raisedBy: ['use.forSleeping'],
};

const sleepwear = ({ words, field }: Wearer): Caution => ({
  id: 'childrens-sleepwear',
  title: say`Children’s sleepwear`,
  sentence: say`For ${words}: in the United States sleepwear of sizes to 14 has to resist flame or fit tightly. This pant hangs loose and is not tight-fitting, so its cloth would have to pass.`,
  source: {
    document: '16 CFR 1615 and 1616',
    clause: '1615.1(a), 1615.1(o), 1616.2(a), 1616.2(m)',
    sure: 'read',
  },
  raisedBy: ['use.forSleeping', field],
});

const loungewear = ({ words, field }: Wearer): Caution => ({
  id: 'childrens-loungewear',
  title: say`Children’s loungewear`,
  sentence: say`For ${words}: in the United States children’s loungewear is regarded as sleepwear, whose cloth has to resist flame unless it fits tightly. This pant is not tight-fitting.`,
  source: { document: 'CPSC letter of 9 December 1996; 16 CFR 1615 and 1616', clause: '', sure: 'read' },
  raisedBy: ['use.forSleeping', field],
});

function infant({ field }: Wearer, { largestExtent }: CautionMeasures): Caution {
  const within = largestExtent <= INFANT_LONGEST;
  return {
    id: 'infant-garment',
    title: say`Infant garment`,
    sentence: within
      ? say`Garments of nine months and smaller are exempt from the sleepwear rules while no piece of a two-piece is longer than ${mm(INFANT_LONGEST)}; this one measures ${mm(largestExtent)} at its longest and stays within that.`
      : say`Garments of nine months and smaller are exempt from the sleepwear rules while no piece of a two-piece is longer than ${mm(INFANT_LONGEST)}; this one measures ${mm(largestExtent)} at its longest and goes beyond that.`,
    source: { document: '16 CFR 1615', clause: '1615.1(c)', sure: 'read' },
    raisedBy: ['use.forSleeping', field],
  };
}

const label = ({ words, field }: Wearer): Caution => ({
  id: 'nightwear-label',
  title: say`Nightwear label`,
  sentence: say`For ${words}: in the United Kingdom pyjamas on sale for children under 13 carry “KEEP AWAY FROM FIRE”, or the wording for cloth of low flammability to BS 5722.`,
  source: { document: 'Nightwear (Safety) Regulations 1985, SI 1985/2043', clause: '', sure: 'read' },
  raisedBy: ['use.forSleeping', field],
});
