/** The sign of the page: a dark picture with one corner that comes back. */
export function Sign() {
  return (
    <svg class="sign" viewBox="0 0 64 64" aria-hidden="true" focusable="false">
      <rect width="64" height="64" rx="12" class="frame" />
      <path d="M12 18h40v28H12z" class="dark" />
      <path d="M52 18v28L30 18z" class="light" />
    </svg>
  );
}
