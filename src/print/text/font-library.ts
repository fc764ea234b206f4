/** Apart, so that it is loaded only when a font is embedded. */
export { default as fontkit } from '@pdf-lib/fontkit';
