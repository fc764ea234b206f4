/** Files that the build sets into the program as text, as they stand. */
declare module '*.html' {
  const text: string;
  export default text;
}
declare module '*.client.js' {
  const text: string;
  export default text;
}
