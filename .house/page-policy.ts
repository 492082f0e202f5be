import type { Plugin } from 'vite';

/**
 * What the built page may load: only what came with it, and no script or style that is written into the page itself.
 * PDFs and files to take away are blobs of the page's own.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Writes the policy into the built page; the page under development needs scripts of the development server in it. */
export const pagePolicy = (): Plugin => ({
  name: 'page-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
  ],
});
