/** @returns what this browser remembers under a name, `otherwise` where it remembers nothing that `sound` accepts */
export function remembered<T>(name: string, sound: (value: unknown) => value is T, otherwise: T): T {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(name) ?? 'null');
    return sound(value) ? value : otherwise;
  } catch {
    return otherwise;
  }
}

/** Remembers a value under a name; a browser that refuses forgets it with the page. */
export function remember(name: string, value: unknown): void {
  try {
    localStorage.setItem(name, JSON.stringify(value));
  } catch {
    // Nothing of the drawing is lost by it.
  }
}
