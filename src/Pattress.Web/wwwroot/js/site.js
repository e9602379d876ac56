// On site: a signature drawn with a finger, photos of a wall, and a screen that stays on while one drills.

import { keepPhoto, photos } from './keep.js';

const pads = new Map();

// Lets a finger draw on the svg inside the element; strokes are points from 0 to 1000 across and down.
export function signOn(elementId) {
  const svg = document.getElementById(elementId);
  if (!svg || pads.get(elementId)?.svg === svg) return;
  const pad = { svg, strokes: [], line: null };
  pads.set(elementId, pad);
  const at = e => {
    const box = svg.getBoundingClientRect();
    const part = (v, from, size) => Math.round(Math.min(1000, Math.max(0, (v - from) / size * 1000)));
    return [part(e.clientX, box.left, box.width), part(e.clientY, box.top, box.height)];
  };
  svg.addEventListener('pointerdown', e => {
    e.preventDefault();
    try { svg.setPointerCapture(e.pointerId); } catch { }
    pad.line = document.createElementNS('http://www.w3.org/2000/svg', 'polyline');
    svg.append(pad.line);
    pad.strokes.push([at(e)]);
    draw(pad);
  });
  svg.addEventListener('pointermove', e => {
    if (!pad.line || pad.strokes.at(-1).length >= 500) return;
    pad.strokes.at(-1).push(at(e));
    draw(pad);
  });
  for (const end of ['pointerup', 'pointercancel']) svg.addEventListener(end, () => { pad.line = null; });
}

function draw(pad) {
  const points = pad.strokes.at(-1);
  pad.line.setAttribute('points', (points.length === 1 ? [points[0], points[0]] : points).map(p => p.join(',')).join(' '));
}

// "x,y x,y;x,y": strokes by semicolon, empty when nothing was drawn.
export function strokes(elementId) {
  return (pads.get(elementId)?.strokes ?? []).slice(0, 200).map(s => s.map(p => p.join(',')).join(' ')).join(';');
}

export function wipe(elementId) {
  const pad = pads.get(elementId);
  if (!pad) return;
  pad.strokes = [];
  pad.svg.replaceChildren();
}

export function print() {
  window.print();
}

let lock;

// Asks that the screen stays on; refused quietly where the browser cannot.
export async function awake(on) {
  try {
    if (on) lock = await navigator.wakeLock?.request('screen');
    else await lock?.release();
  } catch { }
}

// A photo from the file input, made small and written anew: nothing but the picture is left, not where it was taken.
export async function addPhoto(inputId, id, wall, most) {
  const input = document.getElementById(inputId), file = input?.files?.[0];
  if (!file) return false;
  let picture;
  try { picture = await createImageBitmap(file, { imageOrientation: 'from-image' }); } catch { return false; }
  const scale = Math.min(1, most / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  input.value = '';
  const blob = await new Promise(done => canvas.toBlob(done, 'image/jpeg', 0.8));
  await keepPhoto({ id, wall, blob, width: canvas.width, height: canvas.height, marks: '' });
  return true;
}

const shown = new Map();

// Photos of a wall, one a line: id, width, height, address, marks.
export async function photosOf(wall) {
  const all = await photos(wall);
  for (const p of all) if (!shown.has(p.id)) shown.set(p.id, URL.createObjectURL(p.blob));
  return all.map(p => [p.id, p.width, p.height, shown.get(p.id), p.marks].join('\t')).join('\n');
}

export async function markPhoto(wall, id, marks) {
  const photo = (await photos(wall)).find(p => p.id === id);
  if (photo) await keepPhoto({ ...photo, marks });
}

// Where a touch lies on a picture, as parts of its width and height; the picture may be smaller than the element that shows it.
export function partOf(elementId, clientX, clientY) {
  const svg = document.getElementById(elementId);
  if (!svg) return [0, 0];
  const at = new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse()), { width, height } = svg.viewBox.baseVal;
  return [Math.min(1, Math.max(0, at.x / width)), Math.min(1, Math.max(0, at.y / height))];
}
