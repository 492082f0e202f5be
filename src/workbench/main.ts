import '@fontsource/source-sans-3/latin-400.css';
import '@fontsource/source-sans-3/latin-600.css';
import '@fontsource/source-serif-4/latin-400.css';
import '@fontsource/source-serif-4/latin-400-italic.css';
import '@fontsource/source-serif-4/latin-600.css';
import './look/look.css';
import { showStartFault } from './faults/start-page';

const root = document.getElementById('root');
if (!root) throw new Error('the page has no place for the workbench');

// All of the workbench comes in one import, so that whatever is wrong with it, there is somebody left to say so.
await import('./begin').then(({ begin }) => begin(root)).catch((thrown) => showStartFault(root, thrown));
