/** Small choices that outlive the page. A browser that keeps none behaves as if nothing was chosen. */
export class Preferences {
  get(key: string): string | null {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  }

  set(key: string, value: string): void {
    try {
      localStorage.setItem(key, value);
    } catch {
      // Kept for this visit by the state alone.
    }
  }

  clear(): void {
    try {
      localStorage.clear();
    } catch {
      // There is nothing to clear.
    }
  }
}
