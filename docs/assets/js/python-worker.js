// Boots Python and answers questions. Runs in a module worker, started by python-runtime.js.
// It knows one door: calculators.run.run_json, text in, text out.

const folder = new URL("../../vendor/python/", import.meta.url);
const page = /** @type {{postMessage(message: object): void}} */ (/** @type {unknown} */ (self));

// Downloads report that they move, so that a slow network is not taken for a dead worker.
const networkFetch = self.fetch.bind(self);
/** @type {typeof fetch} */
self.fetch = async (...request) => {
  const response = await networkFetch(...request);
  if (!response.ok || !response.body) return response;
  const told = new TransformStream({
    transform(chunk, out) {
      page.postMessage({ kind: "alive" });
      out.enqueue(chunk);
    },
  });
  return new Response(response.body.pipeThrough(told), { headers: response.headers });
};

/** @returns {Promise<(request: string) => string>} */
async function boot() {
  const { loadPyodide } = await import(new URL("pyodide.mjs", folder).href);
  const archive = fetch(new URL("app.zip", folder)).then((response) => response.arrayBuffer());
  const python = await loadPyodide({ indexURL: folder.href, stdLibURL: new URL("stdlib.zip", folder).href });
  python.FS.writeFile("/app.zip", new Uint8Array(await archive));
  return python.runPython("import sys; sys.path.append('/app.zip'); from calculators.run import run_json; run_json");
}

const fail = (/** @type {unknown} */ reason) => page.postMessage({ kind: "failed", reason: String(reason) });
// When WebAssembly cannot start, the runtime's own promise never settles; this is all that is heard of it.
self.addEventListener("unhandledrejection", (event) => fail(event.reason));

const door = boot();
door.then(() => page.postMessage({ kind: "ready" }), fail);
self.addEventListener("message", async ({ data }) => {
  try {
    page.postMessage({ kind: "answer", answer: (await door)(data) });
  } catch (reason) {
    fail(reason);
  }
});
