import { type CSSProperties, memo, Suspense, useEffect, useRef } from 'react';
import { boxRound } from '../../plane';
import { STATION_NAMES, type Station } from '../../project';
import { printPhrase, say, words } from '../../words';
import { Guarded } from '../faults/Guarded';
import { late } from '../faults/late';
import { useManner } from '../look/manner';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { stepOf } from '../store/working-at';
import { useView } from '../view/use-view';
import { useWindowDrag } from '../view/use-window-drag';
import { useWindowSize } from '../view/use-window-size';
import type { Room } from '../view/view';
import { moveViewByKey } from '../view/view-keys';
import { useRun } from '../working/run';
import { ChalkLines } from './ChalkLines';
import { DrawingWords } from './DrawingWords';
import type { DrawingProps } from './drawings/drawing-props';
import { Handles } from './handles/Handles';
import { LitLines, LitPlace } from './LitLines';
import { Grid, RULER, Rulers } from './Rulers';
import { StaleNote } from './StaleNote';
import { STATION_DRAWINGS, type StationDrawing } from './station-drawings';
import { TableTools } from './TableTools';
import { TapeNote } from './TapeNote';
import { ONE_ROW, useTable } from './table-state';
import { useJoining } from './use-joining';
import { useLookedAt } from './use-looked-at';
import { useStationDrawing } from './use-station-drawing';
import { keepWordsApart } from './words-apart/keep-words-apart';

/** The words beside the drawing need room on a wide table; a narrow one hides them. */
const WIDE_ROOM: Room = { left: RULER + 96, top: RULER + 36, right: 96, bottom: 68 };
const NARROW_ROOM: Room = { left: RULER + 14, top: RULER + 22, right: 14, bottom: 78 };
/** Three figures, where the tape goes above them and the names of the measurements at their left. */
const BODY_ROOM: Room = { ...WIDE_ROOM, left: RULER + 128, top: RULER + 76, right: 36 };
/** By how much the back's crotch point lies lower is said at its left. */
const BLOCKS_ROOM: Room = { ...WIDE_ROOM, left: RULER + 156, top: RULER + 44 };
/** Sewing pictures bring their own margins and words. */
const PICTURE_ROOM: Room = { left: RULER + 20, top: RULER + 16, right: 20, bottom: 62 };
const PICTURE_NARROW_ROOM: Room = { ...NARROW_ROOM, left: RULER + 4, right: 4 };
/** The join's player is taller than the tools; the gap at the hem is written between the two. */
const ABOVE_PLAYER = 44;
/** In show mode there are neither tools nor rulers, and large words. */
const SHOW_ROOM: Room = { left: 32, top: 56, right: 32, bottom: 56 };
const SHOW_BODY_ROOM: Room = { ...SHOW_ROOM, left: 320, top: 76 };
const NARROW = 560;
const LOW = 280;

/** Pixels a millimetre below which words within the drawing, or all smaller ones, would lie on one another. */
const FAR = 0.45;
const VERY_FAR = 0.22;

const JoinPlayer = late(() => import('./join/JoinPlayer'), {
  what: say`The player of the join`,
  place: 'inside',
  leave: () => useTable.getState().showJoin(undefined),
});

/** The join as an event: loaded when somebody asks to see it. */
const JOIN: StationDrawing = {
  Drawing: late(() => import('./join/JoinDrawing'), { what: say`The drawing of the join`, place: 'bit' }),
  says: () => say`The two blocks on their way to a leg`,
  box: (draft) => boxRound([STATION_DRAWINGS.blocks.box(draft), STATION_DRAWINGS.leg.box(draft)]),
};
const JOINING = ['join', JOIN] as const;

/** The cutting table: the open station's drawing on paper, with rulers and a grid. */
export function Table() {
  const table = useRef<HTMLElement>(null);
  const element = useRef<HTMLElement>(null);
  const size = useWindowSize(element);
  useEffect(() => (table.current ? keepWordsApart(table.current) : undefined), []);
  const station = useBench((state) => state.station);
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const stale = useBench(isStale);
  const lit = useBench((state) => (state.step === undefined ? undefined : stepOf(state.draft, state.step)));
  const running = useRun((state) => state.going) && lit !== undefined;
  const joining = useJoining();
  const ofStation = useStationDrawing(station);
  const [shown, { Drawing, box, asked, says }] = joining ? JOINING : ofStation;
  const narrow = size.width < NARROW || size.height < LOW;
  const held = useTable((state) => state.held !== undefined);
  const player = useTable((state) => state.playerHeight);
  const showing = useManner((state) => state.showing);
  const around = roomAt(station, narrow, showing);
  const tools = useTable((state) => state.toolsHeight);
  const room = { ...around, bottom: joining ? player + ABOVE_PLAYER : around.bottom + (showing ? 0 : tools - ONE_ROW) };
  const lookedAt = useLookedAt(shown, { box, ...(running || !asked ? {} : { asked }) }, draft);
  const fitted = useView(lookedAt.name, lookedAt.box, size, room, held);
  const showAll = () => {
    lookedAt.leave();
    fitted.showAll();
  };
  const control = { ...fitted, showAll };
  const { view } = control;
  const pointers = useWindowDrag(element, control);
  const zoomed = {
    transform: `translate(${view.left}px, ${view.top}px) scale(${view.scale})`,
    '--unzoomed': 1 / view.scale,
  } as CSSProperties;

  return (
    <main className="table" aria-label={words`Table`} ref={table}>
      <section
        className="table-window"
        ref={element}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing is moved by keys as well as by hand
        tabIndex={0}
        aria-label={words`Drawing at ${STATION_NAMES[station]}. Arrow keys move it, plus and minus zoom, F fits it.`}
        data-narrow={narrow || undefined}
        data-stale={stale || undefined}
        // In show mode the arrows go through the steps.
        onKeyDown={(event) => moveViewByKey(event, control, !useManner.getState().showing)}
        {...pointers}
      >
        <svg
          className="table-paper"
          width={size.width}
          height={size.height}
          // On the screen it is that size; printed, it fits the page.
          viewBox={`0 0 ${size.width} ${size.height}`}
          role="img"
          aria-label={printPhrase(says(draft), units)}
          aria-describedby="drawn"
        >
          {!held && <DrawingWords draft={draft} box={box} />}
          <Grid view={view} size={size} units={units} />
          <g
            className="drawing"
            data-stale={stale || undefined}
            data-station={station}
            data-far={howFar(view.scale)}
            // A step that draws nothing, such as taking the measurements, leaves the whole drawing to look at.
            data-run={(running && lit.lines.length > 0) || undefined}
            style={zoomed}
          >
            <g className="whole">
              <Suspense>
                <Still Drawing={Drawing} draft={draft} />
              </Suspense>
            </g>
            {!joining && (
              <Guarded what={words`The chalk lines`} place="bit">
                <ChalkLines />
              </Guarded>
            )}
            <Guarded what={words`The lines of a step`} place="bit">
              <LitLines />
              <LitPlace />
            </Guarded>
          </g>
          <Rulers view={view} size={size} units={units} />
        </svg>
        {!joining && !running && (
          <Guarded what={words`The yellow buttons`} place="bit">
            <Handles view={view} />
          </Guarded>
        )}
      </section>
      <div className="table-notes">
        <TapeNote />
        <StaleNote />
      </div>
      {joining ? (
        <Suspense>
          <JoinPlayer />
        </Suspense>
      ) : (
        <TableTools control={control} />
      )}
    </main>
  );
}

function roomAt(station: Station, narrow: boolean, showing: boolean): Room {
  if (station === 'sew') return narrow ? PICTURE_NARROW_ROOM : PICTURE_ROOM;
  if (narrow) return NARROW_ROOM;
  if (showing) return station === 'body' ? SHOW_BODY_ROOM : SHOW_ROOM;
  if (station === 'blocks') return BLOCKS_ROOM;
  return station === 'body' ? BODY_ROOM : WIDE_ROOM;
}

const howFar = (scale: number) => (scale < VERY_FAR ? 'very' : scale < FAR ? 'rather' : undefined);

/** Drawn anew when the draft changes, not when it is panned. */
const Still = memo(function Still({
  Drawing,
  draft,
}: DrawingProps & { readonly Drawing: React.ComponentType<DrawingProps> }) {
  return <Drawing draft={draft} />;
});
