const CHUNK = 0x8000;

/** Bytes as text, in pieces: a call takes no more arguments than fit. */
export function base64(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += CHUNK)
    binary += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(binary);
}
