// Says what in src/ breaks the layer rule of .dependency-cruiser.cjs.
import { layerProblems } from './layer-problems.mjs';
import { root } from './paths.mjs';

const { looked, problems } = await layerProblems(root);
for (const problem of problems) console.error(problem);
if (problems.length === 0) console.log(`${looked} files keep to their layers.`);
process.exitCode = problems.length === 0 ? 0 : 1;
