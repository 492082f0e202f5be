import { gatheredWords } from './.house/gather-words';
for (const { file, template, hidden } of gatheredWords()) if (hidden.length && /src\/(check|edges|sewing|project|files|workbench)/.test(file)) console.log(file.replace('src/',''), '|', template, '|', hidden.join(' / '));
