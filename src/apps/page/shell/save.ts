/** Hands a file to the person, by the browser's own way of saving. */
export function saveAs(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The browser has taken it by then; on phones the question where to keep it may stand open for a while.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
