import { useRef } from 'react';
import { words } from '../../../words';
import { ClassProgress } from '../../class/ClassProgress';
import { openClass, useClassOpen } from '../../class/class-open';
import { readProjects } from '../../class/read-projects';
import { FileInput } from '../../fields/FileInput';
import { take } from '../../take/taking';
import { FilesFor } from './FilesFor';
import { TakeFile, TakeOne } from './TakeFile';

/** What a teacher takes: the way to the class, the bodies of several projects on one drawing, the working to read. */
export function ClassFiles() {
  const others = useRef<HTMLInputElement>(null);
  const open = useClassOpen((state) => state.open);
  return (
    <>
      <TakeOne
        name={words`The class …`}
        what={words`A pattern for each learner from one table of bodies, with fit sheets, handouts and a summary.`}
        onClick={openClass}
      >
        {!open && <ClassProgress />}
      </TakeOne>
      <TakeFile
        kind="nested"
        name={words`Several bodies on one drawing`}
        what={words`This pattern and up to eleven more, from their project files, one upon the other.`}
        onPress={() => others.current?.click()}
      />
      <FileInput
        opener={others}
        label={words`Project files to lay on this one`}
        accept=".json,application/json"
        multiple
        onFiles={async (files) => {
          const more = await readProjects(files);
          if (more && more.length > 0) take('nested', more);
        }}
      />
      <FilesFor use="class" />
    </>
  );
}
