import { type ReactNode, useRef, useState } from 'react';
import { NOTHING_MEASURED } from '../../trace';
import { say, words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { FileInput } from '../fields/FileInput';
import { startMeasuring } from '../fields/start-measuring';
import { bring } from '../open/bring';
import { DRAWINGS } from '../open/carried';
import { openPhotoAnew } from '../photo/opened';
import { onThisPage } from '../shelf/start';
import { useBench } from '../store/bench';

export interface WaysProps {
  /** Called before a way is taken. */
  readonly onTaken?: () => void;
}

/** The three ways to begin, each a press away; a block of one's own comes as a drawing or on paper. */
export function Ways({ onTaken = () => undefined }: WaysProps) {
  const [bringing, setBringing] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const look = () => {
    onTaken();
    onThisPage().keeper.look();
    focusOn('.stop[data-open] .stop-name button');
  };
  return (
    <ul className="ways">
      <Way
        name={words`Draft for a body`}
        what={words`From a few measurements: waist, hip, rise and leg.`}
        onPress={() => {
          onTaken();
          startMeasuring();
        }}
      />
      <Way
        name={words`Bring my own block`}
        what={words`A front and back that fit already, drawn or on paper.`}
        open={bringing}
        onPress={() => setBringing(!bringing)}
      >
        {bringing && (
          <div className="way-choices">
            <button type="button" className="button" onClick={() => file.current?.click()}>
              <span className="take-name">{words`From a drawing`}</span>
              <span className="take-what">{words`SVG or DXF: by the names of its lines, or by their shapes`}</span>
            </button>
            <button
              type="button"
              className="button"
              onClick={() => {
                onTaken();
                openPhotoAnew();
              }}
            >
              <span className="take-name">{words`From a photograph`}</span>
              <span className="take-what">{words`of blocks on paper: flattened, marked and drawn at true size`}</span>
            </button>
            <button
              type="button"
              className="button"
              onClick={() => {
                onTaken();
                useBench.getState().takeBlocks(NOTHING_MEASURED, say`The numbers of your blocks go in here.`, true);
              }}
            >
              <span className="take-name">{words`By numbers`}</span>
              <span className="take-what">{words`what a tape measures on the paper of your block`}</span>
            </button>
            <FileInput
              opener={file}
              label={words`Drawing of my blocks`}
              accept={DRAWINGS}
              onFiles={([drawing]) => {
                if (!drawing) return;
                onTaken();
                bring(drawing, true);
              }}
            />
          </div>
        )}
      </Way>
      <Way
        name={words`Look at the example`}
        what={words`A finished pair, from the tape to the sewing: change it as you like.`}
        onPress={look}
      />
    </ul>
  );
}

interface WayProps {
  readonly name: string;
  readonly what: string;
  /** Of a way that opens further ones below it. */
  readonly open?: boolean;
  readonly onPress: () => void;
  readonly children?: ReactNode;
}

function Way({ name, what, open, onPress, children }: WayProps) {
  return (
    <li className="way">
      <button type="button" className="button way-button" aria-expanded={open} onClick={onPress}>
        <span className="way-name">{name}</span>
        <span className="take-what">{what}</span>
      </button>
      {children}
    </li>
  );
}
