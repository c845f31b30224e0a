/** Goes on with some work when whatever else has come meanwhile had its turn. */
export type Later = (goOn: () => void) => void;

/** By messages to oneself, which wait in line with those of others, and which no timer holds back. */
export function laterByMessages(): Later {
  const waiting: (() => void)[] = [];
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => waiting.shift()?.();
  return (goOn) => {
    waiting.push(goOn);
    port2.postMessage(null);
  };
}
