import {readFileSync,readdirSync} from 'fs';
const dir='/tmp/bm/assets/';const first=process.argv.slice(2);
const dec=s=>{const c='ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';let i=0;const next=()=>{let r=0,sh=0,d;do{d=c.indexOf(s[i++]);r|=(d&31)<<sh;sh+=5}while(d&32);return r&1?-(r>>1):r>>1};return{next,more:()=>i<s.length&&s[i]!==','&&s[i]!==';',peek:()=>s[i],skip:()=>i++,end:()=>i>=s.length}};
const tot={};
for(const f of readdirSync(dir).filter(f=>f.endsWith('.js')&&readdirSync(dir).includes(f+'.map')&&first.some(x=>f.startsWith(x)))){
 const m=JSON.parse(readFileSync(dir+f+'.map','utf8'));const lines=readFileSync(dir+f,'utf8').split('\n');
 const d=dec(m.mappings);let line=0,col=0,src=0,prev=null;
 const add=(to)=>{if(prev){tot[prev.s]=(tot[prev.s]??0)+(to-prev.c)}};
 while(!d.end()){const p=d.peek();if(p===';'){add(lines[line]?.length??0);prev=null;line++;col=0;d.skip();continue}if(p===','){d.skip();continue}
  col+=d.next();add(col);if(d.more()){src+=d.next();d.next();d.next();if(d.more())d.next();prev={s:m.sources[src],c:col}}else prev=null}
}
const rows=Object.entries(tot).map(([k,v])=>[k.replace(/^.*?(src|node_modules)\//,'$1/'),v]).sort((a,b)=>b[1]-a[1]);
const g={};for(const[k,v]of rows){const kk=k.startsWith('node_modules')?k.split('/').slice(0,k.split('/')[1].startsWith('@')?3:2).join('/'):k.split('/').slice(0,3).join('/');g[kk]=(g[kk]??0)+v}
console.log(Object.entries(g).sort((a,b)=>b[1]-a[1]).slice(0,60).map(([k,v])=>v+' '+k).join('\n'));console.log('---');console.log(rows.filter(([k])=>k.startsWith('src')).slice(0,45).map(([k,v])=>v+' '+k).join('\n'));
