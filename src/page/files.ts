const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** Hands bytes to the person as a file. */
export function download(fileName: string, bytes: Uint8Array): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type: XLSX }));
  link.download = fileName;
  link.click();
  // The browser reads the address after the click; a minute is more than it needs.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}

/** Lets the person choose a workbook. */
export function chooseFile(chosen: (file: File) => void): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = `.xlsx,${XLSX}`;
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file) chosen(file);
  });
  input.click();
}

export async function fetchBytes(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} is not there.`);
  return new Uint8Array(await response.arrayBuffer());
}
