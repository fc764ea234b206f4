export { tapeNumber as lengthNumber, tapeText as lengthText } from '../gown-file/tape-text.ts';
