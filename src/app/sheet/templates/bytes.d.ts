declare module '*.ttf?bytes' {
  const bytes: Uint8Array;
  export default bytes;
}
