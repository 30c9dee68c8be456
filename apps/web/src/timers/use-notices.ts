/** Whether this device may tell of a timer, as it stands, and the asking for it, which only a tap does. */
import { useEffect, useState } from 'react';

export type Notices = 'none' | 'not asked' | 'refused' | 'allowed';

function standing(): Notices {
  if (typeof Notification === 'undefined' || !('serviceWorker' in navigator)) return 'none';
  return ({ default: 'not asked', denied: 'refused', granted: 'allowed' } as const)[Notification.permission];
}

export function useNotices(): { readonly notices: Notices; readonly ask: () => Promise<void> } {
  const [notices, setNotices] = useState(standing);
  useEffect(() => {
    const seen = () => setNotices(standing());
    document.addEventListener('visibilitychange', seen);
    return () => document.removeEventListener('visibilitychange', seen);
  }, []);
  const ask = async () => {
    await Notification.requestPermission();
    setNotices(standing());
  };
  return { notices, ask };
}

/** Tells of a timer outside the page, where that is allowed; a page that cannot stays as it is. */
export async function tell(id: string, words: string): Promise<void> {
  if (standing() !== 'allowed') return;
  // it may be over as the page opens, before what tells is there
  const registration = await navigator.serviceWorker.ready;
  await registration.showNotification('Fettle', { body: words, tag: `timer ${id}`, icon: 'icon-192.png' });
}
