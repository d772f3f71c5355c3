/*
 * Calls between the page and its workers: a name and what goes with it one way, what comes of it the other. What crosses is copied as
 * `structuredClone` does, functions and classes not.
 */

interface Call {
  readonly call: number;
  readonly name: string;
  readonly given: readonly unknown[];
}

type Answer = { readonly call: number } & ({ readonly value: unknown } | { readonly fault: string });

/** What a worker can be asked, from the page: everything it does, its answer to be waited for. */
export type Across<T> = {
  readonly [Name in keyof T]: T[Name] extends (...given: infer Given) => infer Made ? (...given: Given) => Promise<Awaited<Made>> : never;
};

const handed = new WeakMap<object, Transferable[]>();

/** @returns the same value, whose parts are handed over instead of copied when it crosses: the worker has them no longer */
export function handedOver<T extends object>(value: T, parts: Transferable[]): T {
  handed.set(value, parts);
  return value;
}

/** Lets the page ask for everything that an object does; called once in a worker. */
export function answerCalls(what: Readonly<Record<string, (...given: never[]) => unknown>>): void {
  const here = globalThis as unknown as { onmessage: unknown; postMessage: (message: unknown, parts: Transferable[]) => void };
  here.onmessage = async ({ data: { call, name, given } }: MessageEvent<Call>) => {
    try {
      const value = await (what[name] as (...all: readonly unknown[]) => unknown)(...given);
      const parts = typeof value === 'object' && value !== null ? (handed.get(value) ?? []) : [];
      here.postMessage({ call, value } satisfies Answer, parts);
    } catch (error) {
      here.postMessage({ call, fault: String(error) } satisfies Answer, []);
    }
  };
}

/** @returns what a worker does, to be asked for; where it breaks down, everything that is still waited for is refused */
export function across<T>(worker: Worker): Across<T> {
  const waiting = new Map<number, { readonly resolve: (value: unknown) => void; readonly reject: (error: Error) => void }>();
  let calls = 0;
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const asked = waiting.get(data.call);
    waiting.delete(data.call);
    if ('fault' in data) asked?.reject(new Error(data.fault));
    else asked?.resolve(data.value);
  };
  worker.onerror = () => {
    for (const { reject } of waiting.values()) reject(new Error('the worker stopped'));
    waiting.clear();
  };
  const ask = (name: string) => (...given: readonly unknown[]): Promise<unknown> =>
    new Promise((resolve, reject) => {
      waiting.set(++calls, { resolve, reject });
      worker.postMessage({ call: calls, name, given } satisfies Call);
    });
  // Asked whether it is a promise, it is none.
  return new Proxy({}, { get: (_, name) => (typeof name === 'string' && name !== 'then' ? ask(name) : undefined) }) as Across<T>;
}
