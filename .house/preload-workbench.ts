import type { HtmlTagDescriptor, Plugin } from 'vite';

/**
 * Has the built page fetch the workbench together with the few lines that import it: these are apart only so that there
 * is somebody left to say so where the workbench can't be started, and nobody should wait for that.
 *
 * @param file the end of the path of the module that is imported
 */
export const preloadWorkbench = (file: string): Plugin => ({
  name: 'preload-workbench',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(_html, { bundle = {}, chunk }) {
      const begins = Object.values(bundle).find((one) => one.type === 'chunk' && one.facadeModuleId?.endsWith(file));
      if (begins?.type !== 'chunk') throw new Error(`There is no part of the page that begins with ${file}.`);
      const there = new Set(chunk ? [chunk.fileName, ...chunk.imports] : []);
      return [begins.fileName, ...begins.imports]
        .filter((name) => !there.has(name))
        .map((name): HtmlTagDescriptor => {
          const attrs = { rel: 'modulepreload', crossorigin: true, href: `./${name}` };
          return { tag: 'link', attrs, injectTo: 'head' };
        });
    },
  },
});
