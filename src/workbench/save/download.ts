/** Hands a file to the browser as a download. */
export function download(content: BlobPart, type: string, fileName: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // Some browsers read the address only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
