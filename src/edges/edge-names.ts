import { type Phrase, say } from '../words';

const NAMES = {
  // Of a leg, of a facing of its shape, and of the tip of its fork.
  waist: say`waist`,
  centreFrontTurning: say`turning at centre front`,
  centreFront: say`centre front`,
  crotchFront: say`front crotch curve`,
  inseamFront: say`front inseam`,
  inseamFrontTurning: say`turning at the front inseam`,
  hem: say`hem`,
  inseamBackTurning: say`turning at the back inseam`,
  inseamBack: say`back inseam`,
  crotchBack: say`back crotch curve`,
  centreBack: say`centre back`,
  centreBackTurning: say`turning at centre back`,
  piecing: say`seam of the fork’s tip`,
  // Only the cut line of a tip has ends beside its seam.
  upperEnd: say`upper end of the tip’s seam`,
  lowerEnd: say`lower end of the tip’s seam`,
  // Of a straight piece; the raw edges of facings.
  upper: say`upper edge`,
  lower: say`lower edge`,
  rightEnd: say`right end`,
  leftEnd: say`left end`,
  // Of a pocket.
  opening: say`opening of the pocket`,
  rightSide: say`right side`,
  bottom: say`bottom`,
  leftSide: say`left side`,
  // Round several pieces that lie on each other.
  envelope: say`outline`,
} as const satisfies Readonly<Record<string, Phrase>>;

/** The edges of all pieces; by the same name programs find them in the report and in drawings. */
export type EdgeName = keyof typeof NAMES;

/** What people call an edge. */
export const edgeName = (edge: EdgeName): Phrase => NAMES[edge];

/** The sides of turnings, and the edge that each goes on from and, folded over, lies on. */
const TURNINGS: Readonly<Partial<Record<EdgeName, EdgeName>>> = {
  centreFrontTurning: 'centreFront',
  inseamFrontTurning: 'inseamFront',
  inseamBackTurning: 'inseamBack',
  centreBackTurning: 'centreBack',
};

/** Whether an edge bounds a turning at its side. */
export const isTurning = (edge: EdgeName): boolean => edge in TURNINGS;

/** The edge of which an edge is a part: that which a turning's side goes on from, else itself. */
export const alongEdge = (edge: EdgeName): EdgeName => TURNINGS[edge] ?? edge;

/** Whether an edge is one of these, or the side of a turning that goes on from one. */
export const isAlong = (edge: EdgeName, edges: readonly EdgeName[]): boolean => edges.includes(alongEdge(edge));

/** Whether an edge is seen on the finished leg: no turning, and neither the raw waist nor the raw hem. */
export const isWorn = (edge: EdgeName): boolean => !isTurning(edge) && edge !== 'waist' && edge !== 'hem';
