export type { Check, ClothFigures, FieldChange, Fix, Subject, Verdict } from './check';
export { SELVEDGE } from './check-cloth-width';
export { curvesOneWay } from './check-crotch';
export { pullOnNeeded } from './check-pull-on';
export { riseEaseOf } from './check-rise-ease';
export { checks, runChecks } from './checks';
export { checksOfLegs } from './legs';
export { checkPlace } from './places';
export { VERDICT_NAMES } from './verdict-names';
