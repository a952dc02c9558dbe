// The page's side of Python: one worker, watched. A worker that dies or falls silent is replaced and asked again;
// after two failures in a row the question is given up.

/**
 * @typedef {{text?: string, range?: string}} Result
 * @typedef {{html?: string, inputs?: Record<string, string>, results?: Record<string, Result>,
 *   errors?: Record<string, string>}} Answer
 * @typedef {{key: string, request: string, resolve(answer?: Answer): void, reject(reason: Error): void}} Question
 */

// Longest silence in milliseconds before a worker counts as dead. Tests shorten it.
const limits = { boot: 30_000, answer: 15_000, .../** @type {any} */ (globalThis).pythonLimits };
const FAILURES_ALLOWED = 2;

/** @type {Worker | undefined} */
let worker;
let ready = false;
let failures = 0;
let watchdog = 0;
/** @type {Question | undefined} */
let asked;
/** Newest question of each form that is not sent yet. @type {Map<string, Question>} */
const waiting = new Map();

/** Whether a question would be answered at once. */
export const isReady = () => ready;

/** Start Python unless it runs already. */
export function start() {
  if (worker) return;
  const started = new Worker(new URL("python-worker.js", import.meta.url), { type: "module" });
  started.onmessage = ({ data }) => started === worker && heard(data);
  started.onerror = (event) => started === worker && failed(event.message);
  worker = started;
  watch(limits.boot);
}

/**
 * Ask a calculator; `house` is what the shop has settled, as the form carries it. A newer question with the same key (one per form) replaces an older one, which then resolves
 * to undefined. Rejects when Python cannot be had.
 * @param {string} key @param {string} calculator @param {Record<string, string>} fields
 * @param {object} [house]
 * @returns {Promise<Answer | undefined>}
 */
export function ask(key, calculator, fields, house) {
  return new Promise((resolve, reject) => {
    waiting.get(key)?.resolve();
    waiting.set(key, { key, request: JSON.stringify({ calculator, fields, house }), resolve, reject });
    start();
    sendNext();
  });
}

function sendNext() {
  const [question] = waiting.values();
  if (!ready || asked || !question) return;
  waiting.delete(question.key);
  asked = question;
  worker?.postMessage(question.request);
  watch(limits.answer);
}

/** @param {{kind: string, answer: string, reason: string}} message */
function heard({ kind, answer, reason }) {
  if (kind === "failed") return failed(reason);
  if (kind === "alive") return ready || watch(limits.boot);
  clearTimeout(watchdog);
  if (kind === "ready") {
    ready = true;
  } else if (asked) {
    failures = 0;
    // Where a newer question of the same form is on its way, this answer is already old.
    asked.resolve(waiting.has(asked.key) ? undefined : JSON.parse(answer));
    asked = undefined;
  }
  sendNext();
}

const watch = (/** @type {number} */ limit) => {
  clearTimeout(watchdog);
  watchdog = window.setTimeout(failed, limit, "silent for too long");
};

/** @param {string} reason */
function failed(reason) {
  clearTimeout(watchdog);
  worker?.terminate();
  worker = undefined;
  ready = false;
  failures += 1;
  if (asked && waiting.has(asked.key)) asked.resolve();
  else if (asked) waiting.set(asked.key, asked);
  asked = undefined;
  if (failures < FAILURES_ALLOWED) return start();
  failures = 0;
  for (const question of waiting.values()) question.reject(new Error(reason));
  waiting.clear();
}
