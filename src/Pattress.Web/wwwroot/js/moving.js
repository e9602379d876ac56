// Moves handles on a drawing: the drawing follows every frame, and what stands still for a moment, or is let go, settles.

const QUIET_MS = 120;
// The numbers that run along may take one part in so many of the time: each frame on a quick processor, fewer on a slow one.
const SHARE = 5;
const KEYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

const home = handle => [Number(handle.dataset.x), Number(handle.dataset.y)];

const put = (handle, [x, y]) => handle.setAttribute('transform', `translate(${x} ${y})`);

function place(handle, event) {
  const svg = handle.ownerSVGElement;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [at.x, at.y];
}

function within(handle, [x, y]) {
  const { left, right, top, bottom } = handle.ownerSVGElement.dataset;
  return [Math.min(Math.max(x, Number(left)), Number(right)), Math.min(Math.max(y, Number(top)), Number(bottom))];
}

export function watch(elementId, moving, settled, stepped) {
  const box = document.getElementById(elementId);
  if (!box) return;
  let held = null, frame = 0, quiet = 0, gestures = 0, free = 0;

  const grasp = event => event.target.closest('[data-handle]');

  // What one gesture did is undone together.
  const name = handle => `${gestures} ${handle.dataset.handle}`;

  const rest = () => {
    clearTimeout(quiet);
    if (held) settled(name(held.handle), ...held.at);
  };

  // Asked at the end of a frame: a page that is behind with its frames is no finger that stands still.
  const still = () => {
    if (!held) return;
    const left = held.last + QUIET_MS - performance.now();
    if (left <= 0) rest();
    else quiet = setTimeout(() => requestAnimationFrame(still), left);
  };

  const follow = () => {
    frame = 0;
    if (!held) return;
    put(held.handle, held.at);
    clearTimeout(quiet);
    quiet = setTimeout(() => requestAnimationFrame(still), QUIET_MS);
    const begun = performance.now();
    if (begun < free) return;
    moving(name(held.handle), ...held.at);
    free = performance.now() + (SHARE - 1) * (performance.now() - begun);
  };

  const letGo = event => {
    if (!held || event.pointerId !== held.pointer) return;
    const { handle, moved } = held;
    handle.classList.remove('held');
    if (moved) rest();
    held = null;
    cancelAnimationFrame(frame);
    frame = 0;
    // What was refused goes back to where it was.
    requestAnimationFrame(() => { if (!held) put(handle, home(handle)); });
  };

  // A finger on a handle moves it and not the page.
  box.addEventListener('touchstart', event => { if (grasp(event)) event.preventDefault(); }, { passive: false });

  box.addEventListener('pointerdown', event => {
    const handle = grasp(event);
    if (!handle || held || event.button !== 0) return;
    event.preventDefault();
    const [x, y] = place(handle, event), at = home(handle);
    gestures++;
    held = { handle, pointer: event.pointerId, from: [at[0] - x, at[1] - y], at, moved: false, last: performance.now() };
    handle.setPointerCapture(event.pointerId);
    handle.focus({ preventScroll: true });
    handle.classList.add('held');
  });

  box.addEventListener('pointermove', event => {
    if (!held || event.pointerId !== held.pointer) return;
    const [x, y] = place(held.handle, event);
    held.at = within(held.handle, [x + held.from[0], y + held.from[1]]);
    held.moved = true;
    held.last = performance.now();
    frame ||= requestAnimationFrame(follow);
  });

  box.addEventListener('pointerup', letGo);
  box.addEventListener('pointercancel', letGo);

  box.addEventListener('keydown', event => {
    const handle = grasp(event), step = KEYS[event.key];
    if (!handle || !step) return;
    event.preventDefault();
    const size = event.shiftKey ? 1 : 10;
    stepped(name(handle), step[0] * size, step[1] * size);
  });
}
