/** Hands something to the browser as a file. */
export function downloadFile(name: string, file: Blob): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser has taken it over by the next turn
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

export const download = (name: string, type: string, text: string): void =>
  downloadFile(name, new Blob([text], { type }));
