// The page's side of Python: one worker, watched. A worker that dies or falls silent is replaced and asked again;
// after two failures in a row the question is given up with RuntimeStopped.

/**
 * @typedef {{calculator: string, html?: string, inputs?: Record<string, string>, errors?: Record<string, string>}} Answer
 * @typedef {{key: string, id: number, request: string,
 *   resolve: (answer: Answer | undefined) => void, reject: (reason: Error) => void}} Question
 */

/** Longest silence in milliseconds before a worker counts as dead. Tests shorten it. */
const limits = { boot: 30_000, answer: 15_000, .../** @type {any} */ (globalThis).pythonLimits };
const FAILURES_ALLOWED = 2;

export class RuntimeStopped extends Error {}

/** @type {Worker | undefined} */
let worker;
let ready = false;
let failures = 0;
let newestId = 0;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let watchdog;
/** @type {Question | undefined} */
let asked;
/** Newest question of each form that is not sent yet. @type {Map<string, Question>} */
const waiting = new Map();

/** Whether a question would be answered at once. */
export const isReady = () => ready;

/** Start Python unless it runs already. */
export function start() {
  if (worker) return;
  worker = new Worker(new URL("python-worker.js", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }) => heard(data));
  worker.addEventListener("error", (event) => failed(event.message));
  worker.addEventListener("messageerror", () => failed("unreadable message"));
  watch(limits.boot);
}

/**
 * Ask a calculator. A newer question with the same key replaces an older one, which then resolves to undefined.
 * @param {string} key one per form
 * @param {string} calculator
 * @param {Record<string, string>} fields
 * @returns {Promise<Answer | undefined>} rejects with RuntimeStopped when Python cannot be had
 */
export function ask(key, calculator, fields) {
  return new Promise((resolve, reject) => {
    waiting.get(key)?.resolve(undefined);
    const request = JSON.stringify({ calculator, fields });
    waiting.set(key, { key, id: ++newestId, request, resolve, reject });
    start();
    sendNext();
  });
}

function sendNext() {
  if (!ready || asked) return;
  const [question] = waiting.values();
  if (!question) return;
  waiting.delete(question.key);
  asked = question;
  worker?.postMessage({ id: question.id, request: question.request });
  watch(limits.answer);
}

/** @param {{kind: string, id?: number, answer?: string, reason?: string}} message */
function heard(message) {
  if (message.kind === "failed") {
    failed(message.reason ?? "");
  } else if (message.kind === "alive") {
    if (!ready) watch(limits.boot);
  } else if (message.kind === "ready") {
    clearTimeout(watchdog);
    ready = true;
    sendNext();
  } else if (asked && message.id === asked.id) {
    clearTimeout(watchdog);
    failures = 0;
    // A newer question of the same form is on its way: this answer is already old.
    asked.resolve(waiting.has(asked.key) ? undefined : JSON.parse(message.answer ?? "{}"));
    asked = undefined;
    sendNext();
  }
}

/** @param {number} limit */
function watch(limit) {
  clearTimeout(watchdog);
  watchdog = setTimeout(() => failed("silent for too long"), limit);
}

/** @param {string} reason */
function failed(reason) {
  clearTimeout(watchdog);
  worker?.terminate();
  worker = undefined;
  ready = false;
  failures += 1;
  if (asked) {
    if (waiting.has(asked.key)) asked.resolve(undefined);
    else waiting.set(asked.key, asked);
    asked = undefined;
  }
  if (failures < FAILURES_ALLOWED) {
    start();
    return;
  }
  failures = 0;
  for (const question of waiting.values()) question.reject(new RuntimeStopped(reason));
  waiting.clear();
}
