import './engine-start'; // first, and bare: sorters move named imports
import paper from 'paper/dist/paper-core.js';
import { restore } from './engine-start';

restore();

/**
 * The 2D vector engine, without a canvas. It is large, so it is only loaded for what others drew: see `lazy-path-data`.
 * No object of it leaves this room.
 */
const engine = new paper.PaperScope();
// One scope for all: items belong to the active scope, whoever made them.
engine.setup(new paper.Size(1, 1));
engine.settings.insertItems = false;
engine.view.autoUpdate = false; // its 60 Hz timer would keep a Node process alive for ever

export { engine };
