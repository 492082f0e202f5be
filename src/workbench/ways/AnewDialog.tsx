import { own, words } from '../../words';
import { useAnewOpen } from '../faults/anew-open';
import { Dialog } from '../look/Dialog';
import { saveToFile } from '../save/save';
import { useKept } from '../shelf/kept';
import { useBench } from '../store/bench';
import { Ways } from './Ways';

const close = () => useAnewOpen.setState({ open: false });

/** The ways to begin, beside a project that is open: what becomes of that is said first. */
export default function AnewDialog() {
  const name = useBench((state) => state.project.name);
  const state = useKept((kept) => kept.state);
  const unkept = state === 'full' || state === 'off' || state === 'fault';
  const about =
    state === 'example'
      ? words`The example stays as it is; you can look at it again from here.`
      : unkept
        ? words`“${own(name)}” is not kept on this computer: save it as a file before you begin anew.`
        : words`“${own(name)}” stays on this computer: you find it under Projects.`;
  return (
    <Dialog title={words`New`} about={about} onClose={close}>
      {unkept && (
        <div className="sheet-actions">
          <button type="button" className="button" onClick={saveToFile}>
            {words`Save as a file`}
          </button>
        </div>
      )}
      <Ways onTaken={close} />
    </Dialog>
  );
}
