import ts from 'typescript';

/**
 * Objects, such as a phrase that nobody printed, within a plain template or added to a string: they would read
 * “[object Object]”, which the compiler lets pass.
 *
 * @param {ts.Program} program the checked source
 * @param {(file: string) => boolean} isAsked which of its files to look through
 * @returns {string[]} one line for each
 */
export function printedObjects(program, isAsked) {
  const checker = program.getTypeChecker();
  /** @type {string[]} */
  const found = [];
  for (const file of program.getSourceFiles().filter(({ fileName }) => isAsked(fileName))) {
    /** @param {ts.Node} node */
    const visit = (node) => {
      for (const part of printedParts(node, checker))
        if (holdsObject(checker.getTypeAtLocation(part)))
          found.push(
            `${file.fileName}(${file.getLineAndCharacterOfPosition(part.getStart()).line + 1}): an object within a text: ${part.getText()}`,
          );
      ts.forEachChild(node, visit);
    };
    visit(file);
  }
  return found;
}

/**
 * What a node makes a text of.
 *
 * @param {ts.Node} node
 * @param {ts.TypeChecker} checker
 * @returns {readonly ts.Expression[]}
 */
function printedParts(node, checker) {
  if (ts.isTemplateExpression(node) && !ts.isTaggedTemplateExpression(node.parent))
    return node.templateSpans.map(({ expression }) => expression);
  if (!ts.isBinaryExpression(node)) return [];
  const { left, operatorToken, right } = node;
  const adds = [ts.SyntaxKind.PlusToken, ts.SyntaxKind.PlusEqualsToken].includes(operatorToken.kind);
  return adds && checker.getTypeAtLocation(node).flags & ts.TypeFlags.StringLike ? [left, right] : [];
}

/**
 * @param {ts.Type} type
 * @returns {boolean}
 */
const holdsObject = (type) =>
  type.isUnion() ? type.types.some(holdsObject) : (type.flags & ts.TypeFlags.Object) !== 0;
