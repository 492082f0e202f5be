import type { Check, Subject } from './check';
import { checkAllowances } from './check-allowances';
import { checkCentresSmooth } from './check-centres-smooth';
import { checkChannels } from './check-channels';
import { checkClothWidth } from './check-cloth-width';
import { checkCrotch } from './check-crotch';
import { checkCrotchEnds } from './check-crotch-ends';
import { checkCrotchLength } from './check-crotch-length';
import { checkCutLine } from './check-cut-line';
import { checkElastic } from './check-elastic';
import { checkEstimates } from './check-estimates';
import { checkFork } from './check-fork';
import { checkFullness } from './check-fullness';
import { checkHemCord } from './check-hem-cord';
import { checkHemEntry } from './check-hem-entry';
import { checkHemSmooth } from './check-hem-smooth';
import { checkHipEase } from './check-hip-ease';
import { checkHipLine } from './check-hip-line';
import { checkInseamSlants } from './check-inseam-slants';
import { checkInseams } from './check-inseams';
import { checkKneeEase } from './check-knee-ease';
import { checkLeans } from './check-leans';
import { checkLimbEase } from './check-limb-ease';
import { checkNotches } from './check-notches';
import { checkNumbers } from './check-numbers';
import { checkPiecedTip } from './check-pieced-tip';
import { checkPullOn } from './check-pull-on';
import { checkRiseEase } from './check-rise-ease';
import { checkStitchingLine } from './check-stitching-line';
import { checkThighEase } from './check-thigh-ease';
import { checkTilt } from './check-tilt';
import { checkTracedGrains } from './check-traced-grains';
import { checkTracedHips } from './check-traced-hips';
import { checkTracedInseams } from './check-traced-inseams';
import { checkTracedParts } from './check-traced-parts';
import { checkTurnings } from './check-turnings';
import { checkWaistCord } from './check-waist-cord';
import { checkWaistSmooth } from './check-waist-smooth';

/**
 * All checks in the order in which they are shown: what keeps a person from wearing it, what keeps it from being cut,
 * what keeps it from being sewn, then how well it hangs. A check that has nothing to judge gives nothing.
 */
export const checks: readonly ((subject: Subject) => Check | undefined)[] = [
  checkPullOn,
  checkElastic,
  checkWaistCord,
  checkHemCord,
  checkHemEntry,
  checkThighEase,
  checkKneeEase,
  checkLimbEase,
  checkEstimates,
  checkHipEase,
  checkHipLine,
  checkRiseEase,
  checkCrotchLength,
  checkClothWidth,
  checkCutLine,
  checkStitchingLine,
  checkInseams,
  checkNotches,
  checkCrotch,
  checkCentresSmooth,
  checkWaistSmooth,
  checkHemSmooth,
  checkTurnings,
  checkChannels,
  checkAllowances,
  checkPiecedTip,
  checkNumbers,
  checkTracedParts,
  checkTracedGrains,
  checkTracedHips,
  checkTracedInseams,
  checkLeans,
  checkTilt,
  checkFork,
  checkInseamSlants,
  checkCrotchEnds,
  checkFullness,
];

/** Runs every check on a finished draft. */
export const runChecks = (subject: Subject): readonly Check[] =>
  checks.flatMap((check) => {
    const found = check(subject);
    return found ? [found] : [];
  });
