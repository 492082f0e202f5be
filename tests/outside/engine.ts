import './engine-start'; // first, and bare: sorters move named imports
import paper from 'paper/dist/paper-core.js';
import { restore } from './engine-start';

restore();

/** A 2D vector engine that is not ours, without a canvas, to compare with. */
const engine = new paper.PaperScope();
// One scope for all: items belong to the active scope, whoever made them.
engine.setup(new paper.Size(1, 1));
engine.settings.insertItems = false;
engine.view.autoUpdate = false; // its 60 Hz timer would keep a Node process alive for ever

export { engine };
