export type { PaperBox } from './frame-box.js';
export { printCheckBar } from './frame-check-bar.js';
export { drawingArea, paperNamed, sheetSize } from './frame-paper.js';
export { projectionSymbol, projectionSymbolWidth } from './frame-projection.js';
export { sheetFrame } from './frame-sheet.js';
export { titleBlock, type TitleBlockKind } from './frame-title.js';
export { checkTitleFields, type TitleFields } from './frame-title-fields.js';
