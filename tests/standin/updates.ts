/** An update as the Bot API hands it out; tests may put anything beside its number. */
export interface Update {
  update_id: number;
  [kind: string]: unknown;
}

/**
 * The server's queue of updates: an update stays until a poll with a higher offset confirms it. Redelivery and
 * reordering, which the real server promises not to do but sometimes does, can be asked for.
 */
export class UpdateQueue {
  #waiting: Update[] = [];
  #past: Update[] = [];
  #delivered = new Set<Update>();
  #number: number;
  #arrival: (() => void) | undefined;

  constructor(firstNumber: number) {
    this.#number = firstNumber;
  }

  /** Queues an update under the next number, or under its own. Returns its number. */
  push(content: Record<string, unknown>): number {
    const update = { update_id: this.#number++, ...content } as Update;
    this.#waiting.push(update);
    this.#arrival?.();
    return update.update_id;
  }

  /** Forgets that updates were confirmed: all of the past comes again, with its numbers. */
  redeliver(): void {
    const again = this.#past.splice(0);
    for (const update of again) this.#delivered.delete(update);
    this.#waiting.unshift(...again);
    this.#arrival?.();
  }

  /** Puts what waits into another order. */
  reorder(compare: (a: Update, b: Update) => number): void {
    this.#waiting.sort(compare);
  }

  /** Drops what no poll has asked for, as the server does after a day. */
  expire(): number {
    return this.#waiting.splice(0).length;
  }

  confirm(offset: number): void {
    const isConfirmed = (update: Update) => this.#delivered.has(update) && update.update_id < offset;
    this.#past.push(...this.#waiting.filter(isConfirmed));
    this.#waiting = this.#waiting.filter((update) => !isConfirmed(update));
  }

  take(limit: number): Update[] {
    const batch = this.#waiting.slice(0, limit);
    for (const update of batch) this.#delivered.add(update);
    return batch;
  }

  get waiting(): number {
    return this.#waiting.length;
  }

  /** Resolves when an update arrives, when the time is over, or when the signal aborts. */
  arrival(milliseconds: number, signal: AbortSignal): Promise<void> {
    return new Promise((resolve) => {
      const finish = () => {
        clearTimeout(timer);
        this.#arrival = undefined;
        resolve();
      };
      const timer = setTimeout(finish, milliseconds);
      this.#arrival = finish;
      signal.addEventListener("abort", finish, { once: true });
    });
  }
}
