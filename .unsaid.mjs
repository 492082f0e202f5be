import ts from 'typescript'; import {readFileSync,writeFileSync} from 'fs';
const cfg=ts.getParsedCommandLineOfConfigFile('tsconfig.json',{},{...ts.sys,onUnRecoverableConfigFileDiagnostic(){}});
const p=ts.createProgram(cfg.fileNames,cfg.options);const c=p.getTypeChecker();
const isPhrase=t=>t&&(t.isUnion()?t.types:[t]).some(x=>x.symbol?.name==='Phrase');
let n=0;
for(const s of p.getSourceFiles()){ if(s.fileName.includes('node_modules'))continue; const at=[];
 (function v(node){
  if(ts.isArrayLiteralExpression(node)&&node.elements.length===0){
    const t=c.getContextualType(node);
    let yes=isPhrase(t);
    if(!yes){ // sibling branch of a conditional is a Phrase
      let q=node.parent; while(ts.isParenthesizedExpression(q))q=q.parent;
      if(ts.isConditionalExpression(q)){const o=q.whenTrue===node?q.whenFalse:q.whenTrue; const ot=c.getTypeAtLocation(o); if(!ot.isUnion()?ot.symbol?.name==='Phrase':isPhrase(ot))yes=true;}
    }
    if(yes)at.push(node);
  }
  ts.forEachChild(node,v)})(s);
 if(at.length){let text=readFileSync(s.fileName,'utf8');for(const node of at.reverse()){text=text.slice(0,node.getStart())+'UNSAID'+text.slice(node.end);n++}
  // import
  if(!/\bUNSAID\b.*from|UNSAID,[^;]*from '[^']*words'/.test(text)){
   text=text.replace(/import (type )?\{([^}]*)\} from '((?:\.\.?\/)+(?:src\/)?words)';/,(m,t,names,path)=>t?`import { ${names.split(',').map(x=>x.trim()).filter(Boolean).map(x=>'type '+x).join(', ')}, UNSAID } from '${path}';`:`import { ${names.split(',').map(x=>x.trim()).filter(Boolean).join(', ')}, UNSAID } from '${path}';`);
   if(!/UNSAID\b[^;]*from/.test(text)){const up=s.fileName.replace(/.*\/wt-words\//,'').split('/').length-2;const rel=s.fileName.includes('/tests/')?'../'.repeat(up+1)+'src/words':'../'.repeat(up)+'words';text=`import { UNSAID } from '${rel}';\n`+text;}
  }
  writeFileSync(s.fileName,text)}
}
console.log(n);
