/** The offer of a new version. It takes over when the keeper says so, after everything is written. */
import { useRegisterSW } from 'virtual:pwa-register/react';
import { bookClient } from '../offline/book-client.ts';

export function NewVersion() {
  const {
    needRefresh: [ready, setReady],
    updateServiceWorker,
  } = useRegisterSW({ immediate: true });
  if (!ready) return null;
  return (
    <div className="shell-line" role="status">
      <span>A new version of Fettle is ready. It can wait: nothing changes until you take it.</span>
      <button
        type="button"
        className="words"
        onClick={async () => {
          await bookClient.flush();
          await updateServiceWorker(true);
        }}
      >
        Take it now
      </button>
      <button type="button" className="words" onClick={() => setReady(false)}>
        Later
      </button>
    </div>
  );
}
