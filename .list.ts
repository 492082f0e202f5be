import { gatheredWords } from './.house/gather-words';
for (const { file, template, hidden } of gatheredWords()) if (hidden.length && !/src\/(files|workbench|check|edges|sewing)/.test(file)) console.log(file, '|', template, '|', hidden.join(' / '));
