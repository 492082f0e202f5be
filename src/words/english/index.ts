// Written by `npm run words`.
import { block } from './block';
import { body } from './body';
import { check } from './check';
import { cloth } from './cloth';
import { command } from './command';
import { edges } from './edges';
import { filesClass } from './files-class';
import { filesContent } from './files-content';
import { filesFit } from './files-fit';
import { filesGuide } from './files-guide';
import { filesNest } from './files-nest';
import { filesPdf } from './files-pdf';
import { filesRead } from './files-read';
import { leg } from './leg';
import { project } from './project';
import { sewing } from './sewing';
import { sewingPictures } from './sewing-pictures';
import { sewingSteps } from './sewing-steps';
import { sheets } from './sheets';
import { workbenchFinished } from './workbench-finished';
import { workbenchOpen } from './workbench-open';
import { workbenchPhoto } from './workbench-photo';
import { workbenchShelf } from './workbench-shelf';
import { workbenchStations } from './workbench-stations';
import { workbenchStore } from './workbench-store';
import { workbenchTable } from './workbench-table';
import { workbenchWorking } from './workbench-working';

/** Every message, by its template, with where it comes from: `plain` English, the `trade`, a standard that is named, or ours. */
export const english = {
  ...block,
  ...body,
  ...check,
  ...cloth,
  ...command,
  ...edges,
  ...filesClass,
  ...filesContent,
  ...filesFit,
  ...filesGuide,
  ...filesNest,
  ...filesPdf,
  ...filesRead,
  ...leg,
  ...project,
  ...sewing,
  ...sewingPictures,
  ...sewingSteps,
  ...sheets,
  ...workbenchFinished,
  ...workbenchOpen,
  ...workbenchPhoto,
  ...workbenchShelf,
  ...workbenchStations,
  ...workbenchStore,
  ...workbenchTable,
  ...workbenchWorking,
} as const;
