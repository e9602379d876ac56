// The page's side of the solver: one worker, begun when it is first wanted, ended when somebody cancels.

let worker;
let waiting;

export function solve(lp, count, seconds) {
  worker ??= new Worker('js/solver-worker.js');
  return new Promise((resolve, reject) => {
    waiting = reject;
    worker.onmessage = ({ data }) => { waiting = undefined; resolve(data); };
    worker.onerror = error => { stop(); reject(new Error(error.message || 'the solver could not be loaded')); };
    worker.postMessage({ lp, count, seconds });
  });
}

export function stop() {
  worker?.terminate();
  worker = undefined;
  waiting?.(new Error('stopped'));
  waiting = undefined;
}
