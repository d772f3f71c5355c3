/** @returns the bytes that a text in base 64 stands for; throws where it is none */
export const bytesOf = (base64: string): Uint8Array<ArrayBuffer> => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

/** @returns chunks of bytes, one after the other */
export function joinedBytes(chunks: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}
