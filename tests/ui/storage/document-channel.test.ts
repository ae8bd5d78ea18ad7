import { expect, test } from 'vitest';
import { createDocumentChannel } from '../../../src/ui/storage/document-channel';

test('hear gets what another tab tells, until it stops, and nothing strange', async () => {
  const [one, other] = [new BroadcastChannel('test'), new BroadcastChannel('test')];
  const heard: string[] = [];
  const stop = createDocumentChannel(other).hear((key) => heard.push(key));
  const message = () => new Promise((resolve) => other.addEventListener('message', resolve, { once: true }));
  const arrived = message();
  one.postMessage({ kind: 'something else' });
  await arrived;
  const told = message();
  createDocumentChannel(one).tell('k');
  await told;
  stop();
  const late = message();
  createDocumentChannel(one).tell('later');
  await late;
  one.close();
  other.close();
  expect(heard).toEqual(['k']);
});
