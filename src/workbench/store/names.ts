import { measurements } from '../../body';

const NAMES: Readonly<Record<string, string>> = {
  project: 'The project',
  name: 'Name',
  body: 'Starting body',
  'body.nappy': 'Nappy',
  'cloth.stretch': 'Stretch',
  block: 'Blocks',
  'block.hipEase': 'Ease at the hip',
  'block.waistEase': 'Ease at the waist',
  'block.riseEase': 'Ease in the rise',
  'block.balance': 'Balance',
  'leg.spread': 'Spread',
  'leg.straighten': 'Straighten the centres',
  'leg.raiseWaist': 'Raise the waist',
  'leg.lowerCrotch': 'Lower the crotch',
  'leg.shape': 'Shape',
  'leg.shape.hemGirth': 'Hem girth',
  'leg.length': 'Length',
  'leg.length.inseam': 'Inseam',
  'waist.elasticWidth': 'Elastic width',
  'waist.turnOfCloth': 'Turn of the cloth',
  'waist.elastic': 'The elastic is',
  'waist.rawEdge': 'The raw edge is',
  'hem.depth': 'Hem depth',
  'hem.turnUnder': 'Turned under',
  'allowances.inseam': 'Inseam allowance',
  'allowances.crotch': 'Crotch allowance',
  'paper.sheet': 'Paper',
  'paper.orientation': 'Turned',
  'paper.margin': 'Margin',
  'paper.overlap': 'Overlap',
  'cloth.kind': 'Cloth',
};

/** What the field at a path of the project is called; the path itself where it has no field here. */
export function fieldName(path: string): string {
  return measurements.find((one) => `body.${one.key}` === path)?.name ?? NAMES[path] ?? path;
}
