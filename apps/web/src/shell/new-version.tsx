/** The offer of a new version. It takes over when the keeper says so, after everything is written. */
import { useRegisterSW } from 'virtual:pwa-register/react';
import { useRef, useState } from 'react';
import { bookClient } from '../offline/book-client.ts';

export default function NewVersion() {
  const taking = useRef(false);
  const [elsewhere, setElsewhere] = useState(false);
  const [notKept, setNotKept] = useState(false);
  const {
    needRefresh: [ready, setReady],
    updateServiceWorker,
  } = useRegisterSW({
    immediate: true,
    onRegisteredSW(_, registration) {
      // an app that is kept open for weeks looks for a new version whenever it is looked at
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'visible' && navigator.onLine) registration?.update().catch(() => {});
      });
    },
    onNeedReload() {
      if (taking.current) location.reload();
      // taken in another window: this one goes on as it is until its keeper says so
      else setElsewhere(true);
    },
    onRegisterError() {
      setNotKept(true);
    },
  });
  const take = async () => {
    await bookClient.flush();
    taking.current = true;
    if (elsewhere) location.reload();
    else await updateServiceWorker(true);
  };
  if (notKept)
    return (
      <div className="shell-line" role="status">
        <span>
          This browser does not keep Fettle for use without a network, as in a private window. The boat book itself is
          kept.
        </span>
        <button type="button" className="words" onClick={() => setNotKept(false)}>
          Put away
        </button>
      </div>
    );
  if (!ready && !elsewhere) return null;
  return (
    <div className="shell-line" role="status">
      <span>
        {elsewhere
          ? 'The new version of Fettle was taken in another window. Take it here too before going to another place.'
          : 'A new version of Fettle is ready. It can wait: nothing changes until you take it.'}
      </span>
      <button type="button" className="words" onClick={() => void take()}>
        Take it now
      </button>
      {!elsewhere && (
        <button type="button" className="words" onClick={() => setReady(false)}>
          Later
        </button>
      )}
    </div>
  );
}
