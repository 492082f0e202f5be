import { CLASS_KINDS, FILE_KINDS } from '../files';
import { own, words } from '../words';

/** Where it is said what an option does. */
const COLUMN = 12;

/** What the command line can be asked for, line by line; a message breaks its own lines, at no more than a hundred signs. */
export function usage(): readonly string[] {
  const [project, folder, blocks, bodies] = [words`PROJECT`, words`DIR`, words`BLOCKS`, words`BODIES`];
  const strict = own('--strict');
  const command = `  npm run --silent draft -- ${project}.legwork.json`;
  const options = [
    [project, words`a project file, or - to read it from standard input; several may be named`],
    ['--out', words`the folder to write to; it is made if it is missing`],
    [
      '--files',
      words`which files, with commas between them (all, if left out);\n${own('samples')} draws all projects at a quarter, several to a page, ${own('nested')} draws them on one\ndrawing, ${own('zip')} packs everything in one file`,
    ],
    [
      '--blocks',
      words`an SVG or DXF drawing of your own front and back block, to be used instead of drafting\nthem: each edge a line by its name, as ${own('--files blocks')} writes it, or just two closed\noutlines, each with its grainline, whose shapes tell the rest`,
    ],
    [
      '--class',
      words`a table of bodies, one a row, each drafted with the project’s choices: a folder for each\nwith the files asked for (${own(CLASS_KINDS.join(','))} where that is left out) and a\nsummary, in one ZIP; a row that can’t be drafted is told, and the rest is made`,
    ],
    ['--empty-table', words`write such a table to fill in, in the project’s units`],
    [
      '--strict',
      words`exit with 1 if a check says wrong, or a row of a class can’t be drafted; the files are\nwritten all the same`,
    ],
    [
      '--words',
      words`british (trousers, overlocker), american (pants, serger) or canadian; otherwise as is said\nwhere your system says that you live`,
    ],
    ['--help', words`these lines`],
    ['--', words`what follows is project files, also where a name begins with a hyphen`],
  ] as const;
  return [
    words`Drafts a lounge pant from a project file and writes its pattern.`,
    '',
    `${command} … --out ${folder} [--files ${FILE_KINDS.join(',')}] [--blocks ${blocks}.svg|.dxf] [--strict]`,
    `${command} --class ${bodies}.csv --out ${folder} [--files …] [--strict]`,
    `${command} --empty-table --out ${folder}`,
    '',
    ...options.flatMap(([name, says]) => optionLines(name, says)),
    '',
    ...words`Exit codes: 0 written, 1 written but a check says wrong (${strict}), 2 refused and nothing written;\n129, 130 or 143 where it was stopped (${own('HUP, INT, TERM')}), and nothing written. All files are written or\nnone: where that fails, those of the same names stay as they were.`.split(
      '\n',
    ),
  ];
}

/** An option and what it does beside it, or below it where there is no room. */
function optionLines(name: string, says: string): readonly string[] {
  const head = `  ${name}`;
  const lines = says.split('\n').map((line) => `${' '.repeat(COLUMN)}${line}`);
  if (head.length >= COLUMN) return [head, ...lines];
  return lines.map((line, i) => (i === 0 ? head + line.slice(head.length) : line));
}
