import ts from 'typescript'; import {readFileSync} from 'fs'; import {execSync} from 'child_process';
const rooms=process.argv.slice(2);
const files=execSync('git ls-files src').toString().trim().split('\n').filter(f=>/\.tsx?$/.test(f)&&rooms.some(r=>f.startsWith('src/'+r+'/')));
for(const f of files){const s=ts.createSourceFile(f,readFileSync(f,'utf8'),99,true);
(function v(n){ if(ts.isImportDeclaration(n)||ts.isExportDeclaration(n)||ts.isTypeNode(n))return;
 if(ts.isTaggedTemplateExpression(n)&&['say','words'].includes(n.tag.getText())){ if(ts.isTemplateExpression(n.template))n.template.templateSpans.forEach(x=>v(x.expression)); return;}
 if((ts.isStringLiteral(n)||ts.isNoSubstitutionTemplateLiteral(n))&&/[A-Za-z]{2}/.test(n.text)&&(/ /.test(n.text)||/^[A-Z]/.test(n.text)))console.log(f+':'+(s.getLineAndCharacterOfPosition(n.getStart()).line+1)+': '+n.text.slice(0,110));
 else if(ts.isTemplateExpression(n)&&/[A-Za-z]{3}/.test(n.head.text+n.templateSpans.map(x=>x.literal.text).join('')))console.log(f+':'+(s.getLineAndCharacterOfPosition(n.getStart()).line+1)+': T '+n.getText().slice(0,110).replace(/\n/g,' '));
 ts.forEachChild(n,v)})(s)}
