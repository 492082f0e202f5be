export * from './camera';
export * from './drawing';
export { type BlocksImplied, blocksImplied, toldByBlocks, USUAL_EASE } from './implied';
export * from './marks';
export * from './numbers';
export * from './picture';
export {
  BLOCK_SOURCES,
  type BlockSource,
  type BroughtBlocks,
  blocksBrought,
  broughtTrued,
  isBrought,
  NOTHING_MEASURED,
  type NumberedBlocks,
  SOURCE_NAMES,
  TRACED_SOURCES,
} from './source';
export * from './truing';
