/** The bytes of a base64 text (RFC 4648, section 4, padded); undefined where it is none. */
export function bytesOf(base64: string): Uint8Array | undefined {
  if (base64.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(base64)) return undefined;
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}
