/**
 * Runs a call with a signal that aborts with another one or after so many seconds, whichever comes first. The
 * platform's own signals for that live on for all of the seconds, thousands of them where many notes come.
 */
export async function within<T>(
  seconds: number,
  signal: AbortSignal | undefined,
  // grammY's type for a signal is that of a package for old platforms; it takes the platform's own.
  call: (signal: never) => Promise<T>,
): Promise<T> {
  const ending = new AbortController();
  const end = () => ending.abort();
  if (signal?.aborted) end();
  const timer = setTimeout(end, seconds * 1000);
  signal?.addEventListener("abort", end);
  try {
    return await call(ending.signal as never);
  } finally {
    clearTimeout(timer);
    signal?.removeEventListener("abort", end);
  }
}
