/** A pin: the job is held where it is. The word stands beside it, or in the block's label. */
export function HeldMark() {
  return (
    <svg className="days-held-mark" viewBox="0 0 10 16" aria-hidden="true">
      <circle cx="5" cy="4" r="3.2" />
      <path d="M5 7.2V15" />
    </svg>
  );
}
