export { chooseFile, download } from '../panel/share/files';

export async function fetchBytes(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} is not there.`);
  return new Uint8Array(await response.arrayBuffer());
}
