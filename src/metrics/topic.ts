import { channel } from 'node:diagnostics_channel';

/** Something that happens again and again, told to whoever listens in this process. */
export interface Topic<News> {
  /** Costs next to nothing while nobody listens. */
  tell(news: News): void;
  /** @returns what ends the listening */
  listen(listener: (news: News) => void): () => void;
}

/** @param name unique in the process */
export function topic<News>(name: string): Topic<News> {
  const told = channel(name);
  return Object.freeze<Topic<News>>({
    tell: (news) => told.publish(news),
    listen(listener) {
      const heard = (news: unknown) => listener(news as News); // only `tell` publishes here
      told.subscribe(heard);
      return () => void told.unsubscribe(heard);
    },
  });
}
