export { tapeNumber as lengthNumber, tapeText as lengthText } from '../diagnostics/tape-text.ts';
