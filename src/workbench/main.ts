import '@fontsource/source-sans-3/latin-400.css';
import '@fontsource/source-sans-3/latin-600.css';
import '@fontsource/source-serif-4/latin-400.css';
import '@fontsource/source-serif-4/latin-400-italic.css';
import '@fontsource/source-serif-4/latin-600.css';
import './look/fonts.css';
import './look/theme.css';
import './look/bar.css';
import './look/path.css';
import './look/fields.css';
import './look/table.css';
import './look/lines.css';
import './look/cloth.css';
import './look/sew.css';
import './look/handles.css';
import './look/finished.css';
import './look/working.css';
import './look/show.css';
import './look/hints.css';
import './look/sheet.css';
import './look/faults.css';
// Where the parts stand is said last, so that it holds over what a part says of itself.
import './look/bench.css';
import { showStartFault } from './faults/start-page';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no place for the workbench');

// All of the workbench comes in one import, so that whatever is wrong with it, there is somebody left to say so.
await import('./begin').then(({ begin }) => begin(root)).catch((thrown) => showStartFault(root, thrown));
