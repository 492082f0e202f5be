declare module 'paper/dist/paper-core.js' {
  import paper from 'paper/dist/paper-core';
  export default paper;
}
