import { BLOCK_EDGES, LANDMARKS } from '../../trace';
import { number, said, words } from '../../words';
import { ExactnessNote } from './ExactnessNote';
import { exactnessOfBlock, exactnessOfShot, placesOf } from './flat';
import { LandmarkDiagram } from './LandmarkDiagram';
import { MarkPad } from './MarkPad';
import { lookedAt } from './middle';
import { goTo, nextLandmark, place, usePhoto } from './photo-store';
import { WhichPhotograph } from './WhichPhotograph';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import type { Part } from './work';

/** One block: its places one by one, then points along its curved edges. */
export function BlockStep({ part }: { readonly part: Part }) {
  const work = usePhoto((state) => state.work);
  const next = nextLandmark(work, part);
  const { marks, shot: index } = work[part];
  const set = LANDMARKS.filter((name) => marks.landmarks[name]).length;
  const enough = placesOf(work[part]).length > 1;
  return (
    <>
      {next ? (
        <div className="photo-next" role="status">
          <LandmarkDiagram part={part} next={next} placed={(name) => marks.landmarks[name] !== undefined} />
          <p className="photo-count">{words`${number(set + 1, 0)} of ${number(LANDMARKS.length, 0)}`}</p>
          <p className="take-name">{said(LANDMARK_WORDS[next].name)}</p>
          <p className="field-help">{words`${LANDMARK_WORDS[next].where} Press on it.`}</p>
        </div>
      ) : (
        <Edges part={part} />
      )}
      <button type="button" className="button" onClick={() => lookedAt.current && place(part, lookedAt.current, true)}>
        <span className="take-name">
          {next ? words`Place it with the keyboard` : words`Add a point with the keyboard`}
        </span>
        <span className="take-what">{words`in the middle; arrow keys move it`}</span>
      </button>
      <MarkPad />
      <ExactnessNote
        exactness={enough ? exactnessOfBlock(work, part) : exactnessOfShot(work, index)}
        where={enough ? 'marks' : 'most'}
      />
      <WhichPhotograph />
      <button
        type="button"
        className="button button-main"
        disabled={next !== undefined}
        onClick={() => goTo(part === 'front' ? 'back' : 'use')}
      >
        <span className="take-name">{part === 'front' ? words`Mark the back` : words`Look and use`}</span>
        <span className="take-what">
          {next ? words`when every place is marked` : words`the edges can still be changed later`}
        </span>
      </button>
    </>
  );
}

/** The edge to which points are added. */
function Edges({ part }: { readonly part: Part }) {
  const edge = usePhoto((state) => state.edge);
  const points = usePhoto((state) => state.work[part].marks.points);
  return (
    <fieldset className="photo-edges">
      <legend className="field-label">{words`Now the curves: add points along`}</legend>
      {BLOCK_EDGES.map((name) => (
        <label key={name} className="photo-tick">
          <input
            type="radio"
            name="photo-edge"
            checked={name === edge}
            onChange={() => usePhoto.setState({ edge: name })}
          />
          <span>
            {said(EDGE_NAMES[name])} <span className="quiet">{points[name]?.length ?? 0}</span>
          </span>
        </label>
      ))}
      <p className="field-help">
        {words`Press along the edge, three points or more on a strong curve. What is straight needs none. Where an edge has a corner, tick it for that point.`}
      </p>
    </fieldset>
  );
}
