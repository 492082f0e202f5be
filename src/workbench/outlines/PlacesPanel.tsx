import { type KeyboardEvent, useMemo } from 'react';
import {
  BLOCK_EDGES,
  type BlockReading,
  READ_PLACES,
  type ReadPlace,
  ROUND_PLACES,
  withEdgeNamed,
  withGrainAsDrawn,
  withNamesReversed,
  withNextCorner,
  withRoundPlace,
} from '../../trace';
import { own, type Phrase, said, say, words } from '../../words';
import { EDGE_NAMES, LANDMARK_WORDS } from '../photo/words';
import { useBench } from '../store/bench';
import { EdgeLengths } from './EdgeLengths';
import { closeSheet, useOpenedSheet } from './opened';
import { changeReading, type Hand, PARTS, type Part, takeInHand, useOutlines } from './outlines-store';
import { pairTried, problemsTold } from './tried';

/** By how much an arrow key moves a place, millimetres, with Shift held. */
const FINE = 1;

const PLACE_NAMES: Readonly<Record<ReadPlace, Phrase>> = {
  waistSide: LANDMARK_WORDS.waistSide.name,
  waistCentre: LANDMARK_WORDS.waistCentre.name,
  crotchTop: LANDMARK_WORDS.crotchTop.name,
  crotchPoint: LANDMARK_WORDS.crotchPoint.name,
  hemInseam: LANDMARK_WORDS.hemInseam.name,
  hemSide: LANDMARK_WORDS.hemSide.name,
  grain: say`Grainline`,
  hip: say`Hip line`,
  knee: say`Knee line`,
};

/** What was found of both blocks, to be looked at and changed; then they are used. */
export function PlacesPanel() {
  const work = useOutlines((state) => state.work);
  const hand = useOutlines((state) => state.hand);
  const units = useBench((state) => state.project.units);
  const tried = useMemo(() => pairTried(work), [work]);
  const use = () => {
    if (!tried.ok) return;
    const { anew, fileName } = useOpenedSheet.getState().opened ?? { anew: false, fileName: '' };
    const told = say`The blocks of “${own(fileName)}” are on the table.`;
    useBench.getState().takeBlocks({ source: 'drawn', ...tried.value }, told, anew);
    closeSheet();
  };
  return (
    <>
      <p className="field-help">
        {words`Every edge has its name. Press a place here, then where it lies on the drawing; or press an edge to name it.`}
      </p>
      {hand?.kind === 'edge' && <EdgeNames hand={hand} />}
      {[...PARTS].reverse().map((part) => (
        <Places key={part} part={part} />
      ))}
      {tried.ok && <EdgeLengths pair={tried.value} />}
      {!tried.ok && (
        <ul className="field-problem" aria-label={words`What is missing`}>
          {problemsTold(tried.problems, units).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      <button type="button" className="button button-main" disabled={!tried.ok} onClick={use}>
        <span className="take-name">{words`Use these blocks`}</span>
        <span className="take-what">{words`undo brings the others back`}</span>
      </button>
    </>
  );
}

const partName = (part: Part): string => (part === 'front' ? words`Front` : words`Back`);

/** What the edge that was pressed is. */
function EdgeNames({ hand }: { readonly hand: Hand & { readonly kind: 'edge' } }) {
  return (
    <fieldset className="group" data-edge-names>
      <legend>
        {hand.part === 'front' ? words`This edge of the front is the` : words`This edge of the back is the`}
      </legend>
      <div className="outlines-names">
        {BLOCK_EDGES.map((name, i) => (
          <button
            key={name}
            type="button"
            className="tool"
            aria-pressed={i === hand.index}
            onClick={() => {
              changeReading(hand.part, (reading) => withEdgeNamed(reading, hand.index, i));
              takeInHand({ ...hand, index: i });
            }}
          >
            {said(EDGE_NAMES[name])}
          </button>
        ))}
      </div>
      <p className="field-help">{words`The other edges follow in their order.`}</p>
      <button
        type="button"
        className="button"
        onClick={() => {
          changeReading(hand.part, withNamesReversed);
          takeInHand(undefined);
        }}
      >
        {words`Name them the other way round`}
      </button>
    </fieldset>
  );
}

/** The places of one block: each can be taken in hand, and is then set by a press on the drawing or by the arrow keys. */
function Places({ part }: { readonly part: Part }) {
  const reading = useOutlines((state) => state.work[part]?.reading);
  const hand = useOutlines((state) => state.hand);
  if (!reading) return null;
  return (
    <fieldset className="group">
      <legend>{partName(part)}</legend>
      <div className="outlines-names">
        {READ_PLACES.map((name) => {
          const pressed = hand?.kind === 'place' && hand.part === part && hand.name === name;
          return (
            <button
              key={name}
              type="button"
              className="tool"
              aria-pressed={pressed}
              data-doubt={isDoubtful(reading, name) || undefined}
              onClick={() => takeInHand(pressed ? undefined : { kind: 'place', part, name })}
              onKeyDown={(event) => onArrow(event, part, name)}
            >
              {said(PLACE_NAMES[name])}
              {isDoubtful(reading, name) && <span className="outlines-guess">{words`a guess`}</span>}
              {isMissing(reading, name) && <span className="outlines-guess">{words`to be set`}</span>}
            </button>
          );
        })}
      </div>
      {hand?.kind === 'place' && hand.part === part && <HandHelp part={part} name={hand.name} />}
    </fieldset>
  );
}

const isDoubtful = ({ doubts }: BlockReading, name: ReadPlace): boolean => name !== 'knee' && doubts.has(name);

const isMissing = ({ places, grain, hip }: BlockReading, name: ReadPlace): boolean => {
  const round = ROUND_PLACES.find((one) => one === name);
  return round ? places[round] === undefined : name === 'grain' ? !grain : name === 'hip' && !hip;
};

function HandHelp({ part, name }: { readonly part: Part; readonly name: ReadPlace }) {
  if (name === 'grain')
    return (
      <>
        <p className="field-help">{words`Press the straight line of the drawing that is the grainline.`}</p>
        <button type="button" className="button" onClick={() => changeReading(part, withGrainAsDrawn)}>
          {words`It runs straight up and down as the piece is drawn`}
        </button>
      </>
    );
  if (name === 'hip') return <p className="field-help">{words`Press anywhere on the level of the fullest hip.`}</p>;
  if (name === 'knee')
    return (
      <p className="field-help">{words`Press anywhere on the level of the knee; leave it out where there is none.`}</p>
    );
  return (
    <p className="field-help">
      {words`${LANDMARK_WORDS[name].where} The left and right arrow keys go from corner to corner, with Shift by a millimetre.`}
    </p>
  );
}

/** The arrow keys carry a place to the next corner, with Shift a little on. */
function onArrow(event: KeyboardEvent, part: Part, name: ReadPlace) {
  const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
  const round = ROUND_PLACES.find((one) => one === name);
  if (step === 0 || !round) return;
  event.preventDefault();
  takeInHand({ kind: 'place', part, name });
  changeReading(
    part,
    (reading) =>
      event.shiftKey
        ? withRoundPlace(reading, round, (reading.places[round] ?? 0) + step * FINE)
        : withNextCorner(reading, round, step > 0),
    event.shiftKey ? `${part} ${name}` : undefined,
  );
}
