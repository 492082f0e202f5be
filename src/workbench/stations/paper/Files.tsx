import { words } from '../../../words';
import { Group } from '../../fields/Group';
import { ClassFiles } from './ClassFiles';
import { FilesFor } from './FilesFor';
import { ProjectorFields } from './ProjectorFields';
import { TakeFile } from './TakeFile';

/** The files to take away beside the sheets, by where they are used. */
export const Files = () => (
  <>
    <Group name={words`At the sewing machine`}>
      <FilesFor use="sewing" />
    </Group>
    <Group name={words`At a print shop`}>
      <FilesFor use="printShop" />
    </Group>
    <Group name={words`By a cutting machine`}>
      <FilesFor use="machine" />
    </Group>
    <Group name={words`With a projector`}>
      <ProjectorFields />
      <FilesFor use="projector" />
    </Group>
    <Group name={words`For a class`}>
      <ClassFiles />
    </Group>
    <Group name={words`To keep and to pass on`}>
      <TakeFile kind="zip" name={words`Everything, ZIP`} what={words`The project and all files of this page in one.`} />
      <FilesFor use="other" />
    </Group>
  </>
);
