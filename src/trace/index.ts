export * from './marks';
export {
  BLOCK_SOURCES,
  type BlockSource,
  type BroughtBlocks,
  blocksBrought,
  isBrought,
  SOURCE_NAMES,
  TRACED_SOURCES,
} from './source';
