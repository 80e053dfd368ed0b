import { useEffect, useState } from 'react';

/** Takes a file dropped anywhere on the page; true while one is held over it. */
export function useFileDrop(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const carriesFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') ?? false;
    const hold = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      event.stopPropagation();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      event.stopPropagation();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) onFile(file);
    };
    window.addEventListener('dragover', hold, true);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop, true);
    return () => {
      window.removeEventListener('dragover', hold, true);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop, true);
    };
  });
  return over;
}
