/*
 * Runs in the page that is watched, before anything else in it: plain, since it is read as it is.
 * Notes when the frame is done that is the first to draw on a canvas in the page after a move of a pressed pointer.
 */
{
  const seen = { sinceTold: [], sinceMoved: [] };
  let waiting = [];
  let shown = [];
  let settled = null;
  const painted = new MessageChannel();
  // A message sent while a frame is drawn arrives when that frame is done.
  painted.port1.onmessage = () => {
    const now = performance.now();
    for (const { told, moved } of shown) {
      seen.sinceTold.push(now - told);
      seen.sinceMoved.push(now - moved);
    }
    shown = [];
    if (waiting.length === 0) settled?.();
  };
  const drawn = (canvas) => {
    if (waiting.length === 0 || !('isConnected' in canvas) || !canvas.isConnected) return;
    shown = waiting;
    waiting = [];
    painted.port2.postMessage(null);
  };
  const { fill, drawImage } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.fill = function (...words) {
    drawn(this.canvas);
    return Reflect.apply(fill, this, words);
  };
  CanvasRenderingContext2D.prototype.drawImage = function (...words) {
    drawn(this.canvas);
    return Reflect.apply(drawImage, this, words);
  };
  addEventListener('pointermove', ({ buttons, timeStamp }) => buttons === 1 && waiting.push({ told: performance.now(), moved: timeStamp }), true);
  Object.assign(window, {
    forget: () => void Object.values(seen).forEach((all) => (all.length = 0)),
    seen: () => seen,
    settled: () => new Promise((done) => (waiting.length + shown.length === 0 ? done() : (settled = done))),
  });
}
