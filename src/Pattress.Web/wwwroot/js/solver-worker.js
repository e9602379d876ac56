// HiGHS in a worker: an integer program as LP text in, values out. Loaded only when somebody buys.
/* global importScripts, Module */
importScripts('../highs/highs.js');

let ready;

onmessage = async ({ data }) => {
  try {
    ready ??= Module({ locateFile: file => new URL('../highs/' + file, self.location.href).href });
    const highs = await ready;
    const model = highs.createModel({ format: 'lp', data: data.lp });
    try {
      model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-6, time_limit: data.seconds });
      model.run();
      postMessage(answer(model, data.count));
    } finally {
      model.dispose();
    }
  } catch (error) {
    postMessage('failed ' + String(error));
  }
};

// One line: model status, cost, bound, then the values in the order of the unknowns.
function answer(model, count) {
  const values = new Array(count).fill(0);
  const columns = model.getSolution().colValue;
  for (let i = 0; i < columns.length; i++) values[Number(model.getColName(i).slice(1))] = columns[i];
  return [model.getModelStatus(), model.getObjectiveValue(), Number(model.info.get('mip_dual_bound')), ...values].join(' ');
}
