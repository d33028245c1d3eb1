/** The part of WebDriver BiDi that a hand needs: commands by name over a socket, and their answers. https://w3c.github.io/webdriver-bidi/ */

export interface Bidi {
  /** Sends a command and resolves to its result; rejects with the browser's own words. */
  send: (method: string, params: object) => Promise<Record<string, unknown>>;
  close: () => void;
}

interface Answer {
  id?: number;
  type: string;
  result?: Record<string, unknown>;
  error?: string;
  message?: string;
}

export async function bidi(address: string): Promise<Bidi> {
  const socket = new WebSocket(address);
  const waiting = new Map<number, (answer: Answer) => void>();
  let sent = 0;
  socket.addEventListener('message', ({ data }) => {
    const answer = JSON.parse(String(data)) as Answer;
    waiting.get(answer.id ?? 0)?.(answer);
    waiting.delete(answer.id ?? 0);
  });
  socket.addEventListener('close', () => {
    for (const done of waiting.values()) done({ type: 'error', error: 'the browser is gone' });
    waiting.clear();
  });
  await new Promise((done, failed) => {
    socket.addEventListener('open', done);
    socket.addEventListener('error', () => failed(new Error(`nothing answers at ${address}`)));
  });
  return {
    send: (method, params) =>
      new Promise((done, failed) => {
        sent += 1;
        waiting.set(sent, ({ type, result, error, message }) => {
          if (type === 'success') done(result ?? {});
          else failed(new Error(`${method}: ${error} ${message ?? ''}`));
        });
        socket.send(JSON.stringify({ id: sent, method, params }));
      }),
    close: () => socket.close(),
  };
}
