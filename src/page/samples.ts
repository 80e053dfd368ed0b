import { fetchBytes } from './files';

export { FIRST_SAMPLE, sampleTitle } from '../panel/samples';

/** File names of the samples that were built with the page. */
export async function sampleNames(): Promise<string[]> {
  return JSON.parse(new TextDecoder().decode(await fetchBytes('samples/index.json'))) as string[];
}

export function fetchSample(fileName: string): Promise<Uint8Array> {
  return fetchBytes(`samples/${fileName}`);
}
