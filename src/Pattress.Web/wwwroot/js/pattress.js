// The few things that only the browser can do. No request is ever made from here.

export function placeOn(elementId, clientX, clientY) {
  const svg = document.getElementById(elementId)?.querySelector('svg');
  if (!svg) return [0, 0];
  const at = new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [at.x, at.y];
}

export function room() {
  const main = document.querySelector('main');
  const letter = parseFloat(getComputedStyle(document.documentElement).fontSize) * 0.8;
  if (!main) return [Math.max(240, document.documentElement.clientWidth - 24), letter];
  const style = getComputedStyle(main);
  return [main.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight), letter];
}

let waiting = 0;

export function onResize(resized) {
  addEventListener('resize', () => {
    clearTimeout(waiting);
    waiting = setTimeout(resized, 120);
  });
}

export function openDialog(elementId) {
  const dialog = document.getElementById(elementId);
  if (dialog && !dialog.open) dialog.showModal();
}

export function closeDialog(elementId) {
  document.getElementById(elementId)?.close();
}

export function save(fileName, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

export async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

// The language of the page; remembered, so that the list of jobs speaks it before a job is opened.
export function language(tag, title, english) {
  document.documentElement.lang = tag;
  document.title = title;
  try { localStorage.setItem('pattress-english', english); } catch { }
}

export function english() {
  try { return localStorage.getItem('pattress-english') ?? ''; } catch { return ''; }
}
