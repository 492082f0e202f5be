export * from './camera';
export * from './marks';
export * from './numbers';
export * from './picture';
export {
  BLOCK_SOURCES,
  type BlockSource,
  type BroughtBlocks,
  blocksBrought,
  isBrought,
  type NumberedBlocks,
  SOURCE_NAMES,
  TRACED_SOURCES,
} from './source';
