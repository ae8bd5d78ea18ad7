/** Tells the other tabs that a document was written, and hears it from them. */
export interface DocumentChannel {
  tell(key: string): void;
  /** The answer stops listening. */
  hear(call: (key: string) => void): () => void;
}

export function createDocumentChannel(channel: BroadcastChannel): DocumentChannel {
  return {
    tell: (key) => channel.postMessage({ kind: 'written', key }),
    hear(call) {
      const listen = (event: MessageEvent<unknown>) => {
        const message = event.data as { readonly kind?: unknown; readonly key?: unknown } | null;
        if (message?.kind === 'written' && typeof message.key === 'string') call(message.key);
      };
      channel.addEventListener('message', listen);
      return () => channel.removeEventListener('message', listen);
    },
  };
}
