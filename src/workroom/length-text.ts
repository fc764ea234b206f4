export { tapeNumber as lengthNumber, tapeText as lengthText } from '../spec/tape-text.ts';
