/** The design sheet that a newcomer sees first. */
export const FIRST_SAMPLE = 'push-out-insert.xlsx';

/** `push-out-insert.xlsx` → `Push out insert`. */
export function sampleTitle(fileName: string): string {
  const words = fileName.replace(/\.xlsx$/, '').replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
