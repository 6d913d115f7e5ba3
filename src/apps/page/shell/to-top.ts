/** Shows the answer from its beginning, and lets a screen reader begin there. */
export function toTop(): void {
  scrollTo(0, 0);
  // After it is drawn: the button that had the focus is gone.
  setTimeout(() => document.getElementById('main')?.focus({ preventScroll: true }), 60);
}
