// Writes what docs/ says of the files anew from the catalogue of fields, after a change of it.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './paths.mjs';
import { projectFileText } from './project-file';

const guide = join(root, 'docs', 'project-file.md');
writeFileSync(guide, projectFileText(readFileSync(guide, 'utf8')));
