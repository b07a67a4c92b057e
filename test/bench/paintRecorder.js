// Runs in the page before its own scripts, as it stands here.
const recorder = { recording: false, paints: [], seen: [], frames: [] };
window.conewrightBench = recorder;

new PerformanceObserver((list) => {
  for (const entry of list.getEntriesByName('conewright:paint', 'measure'))
    if (recorder.recording) recorder.paints.push(entry.duration);
}).observe({ type: 'measure' });

let movedAt = null;
const afterFrame = new MessageChannel();
afterFrame.port1.onmessage = ({ data }) => {
  if (recorder.recording) recorder.seen.push(performance.now() - data);
};
window.addEventListener(
  'pointermove',
  () => {
    movedAt ??= performance.now();
  },
  true,
);
const stroke = CanvasRenderingContext2D.prototype.stroke;
CanvasRenderingContext2D.prototype.stroke = function (...path) {
  if (movedAt !== null) {
    afterFrame.port2.postMessage(movedAt);
    movedAt = null;
  }
  stroke.apply(this, path);
};

const tick = (now) => {
  if (recorder.recording) recorder.frames.push(now);
  requestAnimationFrame(tick);
};
requestAnimationFrame(tick);
