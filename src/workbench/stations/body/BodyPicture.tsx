import type { MeasurementKey } from '../../../body';
import type { Box } from '../../../plane';
import { useBench } from '../../store/bench';
import { FigureOf } from '../../table/drawings/FigureOf';
import { type FigureShape, type FigureView, figureShape, widest } from '../../table/drawings/figure-shape';
import { tapeMarks } from '../../table/drawings/tape-paths';

/** The part of a figure that a measurement is about, with the tape on it. */
export function BodyPicture({ measurement }: { readonly measurement: MeasurementKey }) {
  const draft = useBench((state) => state.draft);
  const f = figureShape(draft.body, draft.project.body.height);
  const marks = tapeMarks(measurement, f);
  // The view at which its name stands is the one that shows it best.
  const view = (marks.find(({ label }) => label) ?? marks[0])?.view ?? 'front';
  const { left, right, top, bottom } = seen(view, measurement, f);
  return (
    <svg className="how-picture" aria-hidden="true" viewBox={`${left} ${top} ${right - left} ${bottom - top}`}>
      <FigureOf view={view} shape={f} lit={marks.filter((mark) => mark.view === view)} />
    </svg>
  );
}

const ON_THE_LEG: readonly MeasurementKey[] = ['insideLeg', 'thighGirth', 'kneeGirth', 'calfGirth', 'ankleGirth'];
const TO_THE_FLOOR: readonly MeasurementKey[] = ['waistToKnee', 'outsideLeg'];

/** What of a view is shown: as much as the tape needs, and what one knows it by. */
function seen(view: FigureView, key: MeasurementKey, f: FigureShape): Box {
  const u = f.unit;
  const across = acrossOf(view, f);
  if (view === 'whole') return { ...across, top: f.floor - f.height - 20 * u, bottom: f.floor + 20 * u };
  if (view === 'seated') return { ...across, top: -0.7 * f.ribs, bottom: f.crotchLevel + f.chair + 20 * u };
  if (key === 'footEntryGirth') return { ...across, top: f.floor - 260 * u, bottom: f.floor + 20 * u };
  if (ON_THE_LEG.includes(key)) return { ...across, top: f.crotchLevel - 70 * u, bottom: f.floor + 20 * u };
  const bottom = TO_THE_FLOOR.includes(key) ? f.floor + 20 * u : f.crotchLevel + 110 * u;
  return { ...across, top: -0.7 * f.ribs, bottom };
}

function acrossOf(view: FigureView, f: FigureShape): Pick<Box, 'left' | 'right'> {
  const u = f.unit;
  const behind = Math.min(f.heel, f.aft.hip, f.aft.thigh, 1.25 * f.aft.waist) - 40 * u;
  if (view === 'seated') return { left: behind, right: f.seatedKnee + f.toe };
  if (view === 'side') return { left: behind, right: Math.max(f.toe, f.fore.hip, f.fore.waist) + 40 * u };
  const half = view === 'whole' ? f.half.hip + 220 * u : widest(f) + 40 * u;
  return { left: -half, right: half };
}
