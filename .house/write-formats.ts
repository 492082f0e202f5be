// Writes what docs/ says of the files anew from the catalogue of fields, after a change of it.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { draft, exampleProject } from '../src/project';
import { root } from './paths.mjs';
import { projectFileText } from './project-file';
import { type JsonSchema, projectSchema } from './project-schema';
import { reportSchema } from './report-schema';

const docs = (name: string) => join(root, 'docs', name);
const schemaText = (schema: JsonSchema) => `${JSON.stringify(schema, null, 1)}\n`;

writeFileSync(docs('project-file.md'), projectFileText(readFileSync(docs('project-file.md'), 'utf8')));
writeFileSync(docs('project.schema.json'), schemaText(projectSchema()));
const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('the example can’t be drafted');
writeFileSync(docs('report.schema.json'), schemaText(reportSchema(Object.keys(drafted.value.measures))));
