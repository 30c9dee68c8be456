/** Hands a file to the device to keep. Nothing leaves it. */
export function giveFile(bytes: Uint8Array | string, name: string, type: string): void {
  const url = URL.createObjectURL(new Blob([typeof bytes === 'string' ? bytes : bytes.slice()], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** A name of letters, figures and dashes for a file of a boat. */
export const fileNameOf = (boat: string): string => boat.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-') || 'boat';
