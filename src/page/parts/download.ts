/** Hands a text to the browser as a file. */
export function download(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser has taken it over by the next turn
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
