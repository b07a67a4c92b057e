// Prints a TCP port that is free on this machine now.
import { createServer } from 'node:net';

const probe = createServer();
probe.listen(0, '127.0.0.1', () => {
  console.log(probe.address().port);
  probe.close();
});
