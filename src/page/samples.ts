import { fetchBytes } from './files';

/** The sheet that a newcomer sees first. */
export const FIRST_SAMPLE = 'push-out-insert.xlsx';

/** File names of the samples that were built with the page. */
export async function sampleNames(): Promise<string[]> {
  return JSON.parse(new TextDecoder().decode(await fetchBytes('samples/index.json'))) as string[];
}

export function fetchSample(fileName: string): Promise<Uint8Array> {
  return fetchBytes(`samples/${fileName}`);
}

/** `push-out-insert.xlsx` → `Push out insert`. */
export function sampleTitle(fileName: string): string {
  const words = fileName.replace(/\.xlsx$/, '').replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
