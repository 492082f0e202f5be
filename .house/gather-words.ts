import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { root } from './paths.mjs';

/** One message of the source. */
export interface Gathered {
  /** As `say` builds it: each value's place as `{0}`, `{1}`, … */
  readonly template: string;
  /** What stands in the places, as the source calls it, for those who translate. */
  readonly values: readonly string[];
  /** Where it stands, from the root of the project. */
  readonly file: string;
  /** Words that hide in a value, which no other language could say: a choice between strings, or a text that is glued on. */
  readonly hidden: readonly string[];
}

const TAGS: readonly string[] = ['say', 'words'];
const LETTERS = /\p{L}{2}/u;

/** Every message of `src/`, in the order of the files; those without a letter need no words. */
export function gatheredWords(): readonly Gathered[] {
  const source = join(root, 'src');
  return readdirSync(source, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .sort()
    .flatMap((name) => messagesOf(join(source, name)));
}

/** Each message once, by its template, in the room where it stands first. */
export function wordsByRoom(all: readonly Gathered[]): ReadonlyMap<string, readonly Gathered[]> {
  const firsts = [...new Map(all.toReversed().map((one) => [one.template, one])).values()];
  const sorted = firsts.toSorted((a, b) => (a.template < b.template ? -1 : 1));
  const rooms = [...new Set(sorted.map(roomOf))].sort();
  return new Map(rooms.map((room) => [room, sorted.filter((one) => roomOf(one) === room)]));
}

/** `src/check/fixes.ts` is of `check`; the large rooms are taken folder by folder, and the steps of the sewing by themselves, those of the waist apart. */
function roomOf({ file }: Gathered): string {
  const [, room = '', ...inner] = file.split('/');
  if (room === 'sewing' && inner[0]?.startsWith('steps-waist')) return 'sewing-waist';
  if (room === 'sewing' && inner[0]?.startsWith('steps-')) return 'sewing-steps';
  return ['files', 'sewing', 'workbench'].includes(room) && inner.length > 1 ? `${room}-${inner[0]}` : room;
}

function messagesOf(path: string): readonly Gathered[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true, kind);
  const found: Gathered[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && TAGS.includes(node.tag.getText())) {
      const { template: parts } = node;
      const [head, spans] = ts.isNoSubstitutionTemplateLiteral(parts) ? [parts, []] : [parts.head, parts.templateSpans];
      const template = spans.reduce((all, { literal }, i) => `${all}{${i}}${literal.text}`, head.text);
      const values = spans.map(({ expression }) => expression);
      if (LETTERS.test(template.replace(/\{\d+\}/g, '')))
        found.push({
          template,
          values: values.map((value) => value.getText().replace(/\s+/g, ' ')),
          file: relative(root, path).replaceAll('\\', '/'),
          hidden: values.flatMap(hiddenWords),
        });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** Strings with letters in a value, save those in a message of its own and those that only are compared or looked up. */
function hiddenWords(value: ts.Node): readonly string[] {
  if (ts.isTaggedTemplateExpression(value) && TAGS.includes(value.tag.getText())) return [];
  if (ts.isBinaryExpression(value) && /^[!=]==$/.test(value.operatorToken.getText())) return [];
  if (ts.isCallExpression(value) || ts.isElementAccessExpression(value)) return [];
  if (ts.isStringLiteralLike(value) || ts.isTemplateHead(value) || ts.isTemplateMiddleOrTemplateTail(value))
    return LETTERS.test(value.text) ? [value.text] : [];
  const found: string[] = [];
  ts.forEachChild(value, (child) => {
    found.push(...hiddenWords(child));
  });
  return found;
}
