/** Shares a list as text, and says what became of it; where the device cannot, the text stands there to be copied. */
import { useState } from 'react';
import { type Shared, shareText } from './share-text.ts';

const told: Readonly<Partial<Record<Shared, string>>> = {
  shared: 'Handed on.',
  'on the clipboard': 'On the clipboard: paste it where it is to go.',
};

export function ShareButton({ title, text }: { readonly title: string; readonly text: string }) {
  const [shared, setShared] = useState<Shared | null>(null);
  return (
    <>
      <button type="button" onClick={() => void shareText(title, text).then(setShared)}>
        Share as text
      </button>
      <span role="status" className="small soft">
        {shared === null ? '' : (told[shared] ?? '')}
      </span>
      {shared === 'not possible' && (
        <label className="stores-copy">
          This device shares no text. Copy it from here:
          <textarea readOnly rows={8} value={text} onFocus={(event) => event.target.select()} />
        </label>
      )}
    </>
  );
}
