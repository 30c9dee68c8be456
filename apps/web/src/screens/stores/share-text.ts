/** Gives a list to another program as plain text: by the device's own share sheet, else by the clipboard. */

export type Shared = 'shared' | 'on the clipboard' | 'left' | 'not possible';

/** What became of it. `left`: the keeper closed the share sheet. */
export async function shareText(title: string, text: string): Promise<Shared> {
  if (typeof navigator.share === 'function') {
    try {
      await navigator.share({ title, text });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
      // a browser that has the call but no way to share falls through to the clipboard
    }
  }
  try {
    await navigator.clipboard.writeText(text);
    return 'on the clipboard';
  } catch {
    return 'not possible';
  }
}
