import { sheetsOf } from '../../../project';
import { number, type Phrase, said, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { TakeFile } from './TakeFile';

/** The pattern as a file to print, by one press, with how many sheets it takes. */
export function PrintPattern() {
  const count = useBench((state) => sheetsOf(state.draft).sheets.length);
  const sample = useBench((state) => state.draft.project.paper.scale !== 1);
  return (
    <TakeFile
      main
      kind="pdf"
      name={said(printName(count, sample))}
      what={words`A PDF at true scale, and before it a first page with two squares to measure and the map of the sheets.`}
    />
  );
}

function printName(count: number, sample: boolean): Phrase {
  if (sample) return count === 1 ? say`Print the sample: 1 sheet` : say`Print the sample: ${number(count, 0)} sheets`;
  return count === 1 ? say`Print the pattern: 1 sheet` : say`Print the pattern: ${number(count, 0)} sheets`;
}
