/** Longest wait for a first paint, ms: a page opened in the background is not painted at all. */
const LONGEST = 2000;

/** When the page has been painted for the first time, so that what is fetched next does not delay that. */
export function whenPainted(): Promise<void> {
  return new Promise((resolve) => {
    if (!PerformanceObserver.supportedEntryTypes.includes("paint")) {
      requestAnimationFrame(() => setTimeout(resolve));
      return;
    }
    setTimeout(resolve, LONGEST);
    const observer = new PerformanceObserver((list) => {
      if (list.getEntriesByName("first-contentful-paint").length === 0) return;
      observer.disconnect();
      resolve();
    });
    observer.observe({ type: "paint", buffered: true });
  });
}
