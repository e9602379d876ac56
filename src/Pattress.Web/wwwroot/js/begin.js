// Starts the app. What the worker keeps was checked when it was put there, and is not checked again at every start. Methods that
// were much used when the app started before are made ready at once: the runtime notes them in the browser's cache, by version.
const NOTED_AFTER_S = 5;

Blazor.start({
  configureRuntime: runtime => {
    if (navigator.serviceWorker?.controller) runtime.withConfig({ disableIntegrityCheck: true });
    runtime.withInterpreterPgo?.(true, NOTED_AFTER_S);
  },
});
