import type { BlockEdge } from '../../block';
import { BLOCK_EDGES, isFollowed, landmarksOf } from '../../trace';
import { number, said, words } from '../../words';
import { ExactnessNote } from './ExactnessNote';
import { exactnessOfBlock, exactnessOfShot, placesOf } from './flat';
import { LandmarkDiagram } from './LandmarkDiagram';
import { MarkPad } from './MarkPad';
import { lookedAt } from './middle';
import { changeWork, goTo, nextLandmark, place, usePhoto } from './photo-store';
import { likelyPixel } from './shown-place';
import { WhichPhotograph } from './WhichPhotograph';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import { type Part, withByHand, withKnee } from './work';

/** One block: its places one by one, then points along its curved edges. */
export function BlockStep({ part }: { readonly part: Part }) {
  const work = usePhoto((state) => state.work);
  const next = nextLandmark(work, part);
  const { marks, shot: index } = work[part];
  const places = landmarksOf(marks);
  const set = places.filter((name) => marks.landmarks[name]).length;
  const byKeys = () => {
    const at = likelyPixel(work, part) ?? lookedAt.current;
    if (at) place(part, at, true);
  };
  const enough = placesOf(work[part]).length > 1;
  return (
    <>
      {next ? (
        <div className="photo-next" role="status">
          <LandmarkDiagram part={part} next={next} placed={(name) => marks.landmarks[name] !== undefined} />
          <p className="photo-count">{words`${number(set + 1, 0)} of ${number(places.length, 0)}`}</p>
          <p className="take-name">{said(LANDMARK_WORDS[next].name)}</p>
          <p className="field-help">{words`${LANDMARK_WORDS[next].where} Press on it.`}</p>
        </div>
      ) : (
        <Edges part={part} />
      )}
      <button type="button" className="button" onClick={byKeys}>
        <span className="take-name">
          {next ? words`Place it with the keyboard` : words`Add a point with the keyboard`}
        </span>
        <span className="take-what">
          {next ? words`where it likely lies; arrow keys move it` : words`in the middle; arrow keys move it`}
        </span>
      </button>
      {(next === 'knee' || marks.kneeless) && (
        <button
          type="button"
          className="plain-link"
          onClick={() => changeWork(withKnee(work, part, marks.kneeless === true))}
        >
          {marks.kneeless ? words`This block has a knee line after all` : words`This block has no knee line`}
        </button>
      )}
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

/** How each edge runs, and the edge to which points are added. */
function Edges({ part }: { readonly part: Part }) {
  const edge = usePhoto((state) => state.edge);
  const { marks, byHand = [] } = usePhoto((state) => state.work[part]);
  const told = (name: BlockEdge): string => {
    const count = marks.points[name]?.length ?? 0;
    if (isFollowed(marks, name)) return count > 0 ? words`as drawn, through ${number(count, 0)}` : words`as drawn`;
    return count > 0 ? String(count) : byHand.includes(name) ? words`by hand` : words`no line shows`;
  };
  return (
    <fieldset className="photo-edges">
      <legend className="field-label">{words`The edges, as they are drawn on the paper`}</legend>
      {BLOCK_EDGES.map((name) => (
        <label key={name} className="photo-tick">
          <input
            type="radio"
            name="photo-edge"
            checked={name === edge}
            onChange={() => usePhoto.setState({ edge: name })}
          />
          <span>
            {said(EDGE_NAMES[name])} <span className="quiet">{told(name)}</span>
          </span>
        </label>
      ))}
      <label className="photo-tick">
        <input
          type="checkbox"
          checked={!byHand.includes(edge)}
          onChange={(event) => {
            const { work } = usePhoto.getState();
            changeWork(withByHand(work, part, edge, !event.target.checked));
          }}
        />
        <span>{words`this edge follows the drawn line`}</span>
      </label>
      <p className="field-help">
        {words`Where an edge leaves its line, choose it and press on the line: it then passes there. Where no line shows, three points or more make a strong curve, and what is straight needs none. Where an edge has a corner, tick it for that point.`}
      </p>
    </fieldset>
  );
}
