/** Resolves after the browser has drawn what was last asked for, so that "Working…" is seen before the work. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    // A hidden page draws nothing and calls no frame: the timer alone must do then.
    const timer = setTimeout(resolve, 200);
    requestAnimationFrame(() => {
      clearTimeout(timer);
      setTimeout(resolve, 0);
    });
  });
}
