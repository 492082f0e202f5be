// Written by `npm run words`.
import { block } from './block';
import { body } from './body';
import { check } from './check';
import { cloth } from './cloth';
import { command } from './command';
import { drawing } from './drawing';
import { edges } from './edges';
import { filesClass } from './files-class';
import { filesContent } from './files-content';
import { filesFit } from './files-fit';
import { filesGuide } from './files-guide';
import { filesMake } from './files-make';
import { filesNest } from './files-nest';
import { filesPdf } from './files-pdf';
import { filesRead } from './files-read';
import { filesSvg } from './files-svg';
import { filesWork } from './files-work';
import { leg } from './leg';
import { project } from './project';
import { sewing } from './sewing';
import { sewingPictures } from './sewing-pictures';
import { sewingSteps } from './sewing-steps';
import { sewingWaist } from './sewing-waist';
import { sheets } from './sheets';
import { trace } from './trace';
import { words } from './words';
import { workbench } from './workbench';
import { workbenchAloud } from './workbench-aloud';
import { workbenchBar } from './workbench-bar';
import { workbenchChalk } from './workbench-chalk';
import { workbenchClass } from './workbench-class';
import { workbenchFaults } from './workbench-faults';
import { workbenchFields } from './workbench-fields';
import { workbenchFinished } from './workbench-finished';
import { workbenchHelp } from './workbench-help';
import { workbenchHints } from './workbench-hints';
import { workbenchLook } from './workbench-look';
import { workbenchOpen } from './workbench-open';
import { workbenchOutlines } from './workbench-outlines';
import { workbenchPath } from './workbench-path';
import { workbenchPhoto } from './workbench-photo';
import { workbenchProjects } from './workbench-projects';
import { workbenchSave } from './workbench-save';
import { workbenchShelf } from './workbench-shelf';
import { workbenchShow } from './workbench-show';
import { workbenchStations } from './workbench-stations';
import { workbenchStore } from './workbench-store';
import { workbenchTable } from './workbench-table';
import { workbenchTake } from './workbench-take';
import { workbenchWays } from './workbench-ways';
import { workbenchWorking } from './workbench-working';

/** Every message, by its template, with where it comes from, as `docs/labels.md` says. */
export const english = {
  ...block,
  ...body,
  ...check,
  ...cloth,
  ...command,
  ...drawing,
  ...edges,
  ...filesClass,
  ...filesContent,
  ...filesFit,
  ...filesGuide,
  ...filesMake,
  ...filesNest,
  ...filesPdf,
  ...filesRead,
  ...filesSvg,
  ...filesWork,
  ...leg,
  ...project,
  ...sewing,
  ...sewingPictures,
  ...sewingSteps,
  ...sewingWaist,
  ...sheets,
  ...trace,
  ...words,
  ...workbench,
  ...workbenchAloud,
  ...workbenchBar,
  ...workbenchChalk,
  ...workbenchClass,
  ...workbenchFaults,
  ...workbenchFields,
  ...workbenchFinished,
  ...workbenchHelp,
  ...workbenchHints,
  ...workbenchLook,
  ...workbenchOpen,
  ...workbenchOutlines,
  ...workbenchPath,
  ...workbenchPhoto,
  ...workbenchProjects,
  ...workbenchSave,
  ...workbenchShelf,
  ...workbenchShow,
  ...workbenchStations,
  ...workbenchStore,
  ...workbenchTable,
  ...workbenchTake,
  ...workbenchWays,
  ...workbenchWorking,
} as const;
