/*
 * In the page: recolours so many times by an event on an element, each time to the end of the next frame, and looks at the canvas then.
 * Left as it is: what tsx makes of a function does not run in a page.
 */
window.recoloured = async ({ selector, event, times }) => {
  const canvas = document.querySelector('canvas');
  const look = () => canvas.getContext('2d').getImageData(canvas.width / 3, canvas.height / 3, 60, 60).data.join();
  const shown = [];
  for (let i = 0; i < times; i++) {
    await new Promise((go) => setTimeout(go, 120));
    const before = look();
    const begun = performance.now();
    document.querySelector(selector).dispatchEvent(new MouseEvent(event, { bubbles: true }));
    await new Promise((go) => requestAnimationFrame(() => setTimeout(go)));
    const took = performance.now() - begun;
    shown.push({ took, next: look() !== before });
  }
  return shown;
};
