import { useEffect, useRef } from 'react';
import { printPhrase, said, say, UNSAID, words } from '../../../words';
import { focusOn } from '../../aloud/focus-on';
import { useBench } from '../../store/bench';
import { draftSteps } from '../../store/told-steps';
import { motionWelcome } from '../LitLines';
import { JOIN_END, useTable } from '../table-state';
import { useHeight } from '../use-height';

/** The stops of the way: what the blocks have become there, and the step of the working that tells it. */
const STOPS = [
  { name: say`apart`, step: 'leg.join' },
  { name: say`joined`, step: 'leg.join' },
  { name: say`spread`, step: 'leg.spread' },
  { name: say`straightened`, step: 'leg.straighten' },
  { name: say`the leg`, step: 'leg.shape' },
] as const;

/** From one stop to the next, milliseconds. */
const PART = 1800;

const tellHeight = (playerHeight: number): void => useTable.setState({ playerHeight });

/** Scrubs or plays the join, and says what happens. */
export default function JoinPlayer() {
  const join = useTable((state) => state.join) ?? 0;
  const playing = useTable((state) => state.joinPlaying);
  const units = useBench((state) => state.project.units);
  const stop = STOPS[Math.ceil(join - 1e-6)] ?? STOPS[0];
  const sentence = useBench((state) => draftSteps(state.draft).find((one) => one.id === stop.step)?.sentence);
  const { showJoin, playJoin } = useTable.getState();
  usePlayedJoin(playing);
  const element = useRef<HTMLElement>(null);
  const pause = useRef<HTMLButtonElement>(null);
  // The button that asked for it is gone; and where it stood, or the table under a class’s eyes, gets the focus back.
  useEffect(() => {
    pause.current?.focus({ preventScroll: true });
  }, []);
  const put = () => {
    showJoin(undefined);
    focusOn('.tool-join', '.table-window');
  };
  useHeight(element, tellHeight);
  return (
    <section className="player" aria-label={words`The join`} ref={element}>
      <p className="player-words">{sentence && printPhrase(sentence, units)}</p>
      <div className="player-row">
        <button ref={pause} type="button" className="tool" aria-pressed={playing} onClick={() => playJoin(!playing)}>
          {playing ? words`Pause` : words`Play`}
        </button>
        <div className="player-way">
          <input
            type="range"
            min="0"
            max={JOIN_END}
            step="0.05"
            value={join}
            aria-label={words`From the blocks to the leg`}
            aria-valuetext={valueText(join)}
            onChange={(event) => showJoin(Number(event.target.value))}
          />
          <span className="player-stops" aria-hidden="true">
            {STOPS.map(({ name }) => (
              <span key={name.template}>{said(name)}</span>
            ))}
          </span>
        </div>
        <button type="button" className="tool" onClick={put}>
          {words`Done`}
        </button>
      </div>
    </section>
  );
}

function valueText(join: number): string {
  const at = Math.round(join);
  const name = STOPS[at]?.name ?? UNSAID;
  return Math.abs(join - at) < 0.03 ? said(name) : words`on the way to ${STOPS[Math.ceil(join)]?.name ?? name}`;
}

/** Moves on while it is played: smoothly, or from stop to stop where movement is not welcome. */
function usePlayedJoin(playing: boolean): void {
  useEffect(() => {
    if (!playing) return;
    const go = (join: number) => useTable.setState({ join, joinPlaying: join < JOIN_END });
    const from = useTable.getState().join ?? 0;
    if (!motionWelcome()) {
      const wait = setInterval(() => go(Math.min(JOIN_END, Math.floor(useTable.getState().join ?? 0) + 1)), PART);
      return () => clearInterval(wait);
    }
    const start = performance.now();
    let frame = requestAnimationFrame(function step(now) {
      const join = Math.min(JOIN_END, from + Math.max(0, now - start) / PART);
      go(join);
      if (join < JOIN_END) frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing]);
}
