/**
 * Answers of the database that are remembered until something is written. The one writer may do so; whoever reads
 * beside it may not. Forgotten as a whole where a transaction is rolled back.
 */
export interface Memory<K, V> {
  get(key: K): V;
  /** What is remembered is now something else; what is not will be read when it is asked for. */
  change(key: K, to: (before: V) => V): void;
  /** Remembers what need not be read: the writer knows it. */
  put(key: K, value: V): void;
  /** One of them, or all. */
  forget(key?: K): void;
}

const KEPT_MAX = 2_000;

/** Remembers what `read` gave by its key; remembers nothing where `isKept` is false. */
export function createMemory<K, V>(read: (key: K) => V, isKept: boolean): Memory<K, V> {
  const known = new Map<K, V>();
  const put = (key: K, value: V) => {
    if (!isKept) return;
    if (known.size >= KEPT_MAX) known.clear();
    known.set(key, value);
  };
  return {
    put,
    get(key) {
      const before = known.get(key);
      if (before !== undefined || known.has(key)) return before as V;
      const value = read(key);
      put(key, value);
      return value;
    },
    change(key, to) {
      const before = known.get(key);
      if (before !== undefined) known.set(key, to(before));
    },
    forget(key) {
      if (key === undefined) known.clear();
      else known.delete(key);
    },
  };
}
