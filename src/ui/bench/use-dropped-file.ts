import { useEffect, useState } from 'react';

function carriesFile(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/** Takes a file that is dropped anywhere on the page; true while one is held over it. */
export function useDroppedFile(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);

  useEffect(() => {
    function onDragOver(event: DragEvent): void {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(true);
    }
    function onDragLeave(event: DragEvent): void {
      if (event.relatedTarget === null) setOver(false);
    }
    function onDrop(event: DragEvent): void {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) onFile(file);
    }
    window.addEventListener('dragover', onDragOver);
    window.addEventListener('dragleave', onDragLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onDragOver);
      window.removeEventListener('dragleave', onDragLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [onFile]);
  return over;
}
