// Makes each form.calculator live: asks Python shortly after typing, shows the answer or the sentences at the fields.
// Nothing here steals focus or changes what was typed.

import { FormField } from "./form-field.js";
import { ask, isReady, start } from "./python-runtime.js";
import { fromAddress, linkTo, recall, remember } from "./saved-inputs.js";
import { button } from "./small-parts.js";

const AFTER_TYPING = 150; // ms until Python is asked
const BEFORE_ERRORS = 700; // ms of quiet before a half-typed field is called wrong
const BEFORE_SPEAKING = 1200; // ms of quiet before a new answer is announced

class CalculatorForm {
  /** @param {HTMLFormElement} form @param {number} index place on the page */
  constructor(form, index) {
    this.slug = form.dataset.calculator ?? "";
    this.house = form.dataset.house && JSON.parse(form.dataset.house);
    this.key = `${this.slug} ${index}`;
    const card = form.closest(".calculator-card") ?? form;
    this.panel = /** @type {HTMLElement} */ (card.querySelector("[data-answer]"));
    this.status = /** @type {HTMLElement} */ (card.querySelector("[data-status]"));
    this.fields = [...form.querySelectorAll("[data-field]")].map((box) => new FormField(/** @type {any} */ (box)));
    this.example = this.shown = this.panel.innerHTML;
    this.greeting = this.status.textContent;
    this.lastTyped = 0;
    this.round = 0; // only the answer to the newest question is shown
    this.moved = this.sliding = false;
    /** @type {Record<string, ReturnType<typeof setTimeout>>} */
    this.timers = {};

    // The status line speaks, once and briefly; a live panel would read out every replaced answer whole.
    this.panel.setAttribute("aria-live", "off");
    form.addEventListener("input", ({ target }) => {
      if (/** @type {Element} */ (target).matches("[data-slide]")) this.slid();
      else this.typed();
    });
    form.addEventListener("change", () => this.typed(true));
    form.addEventListener("submit", (event) => event.preventDefault());
    card.addEventListener("click", (event) => this.clicked(/** @type {Element} */ (event.target)));
    for (const touch of ["focusin", "pointerdown"]) card.addEventListener(touch, start, { once: true });
    window.addEventListener("hashchange", () => this.fill(fromAddress(this.slug)));
    const sent = fromAddress(this.slug);
    this.fill(sent ?? recall(this.key));
    if (sent && window.scrollY === 0) form.scrollIntoView();
  }

  /** Every field's text. */
  get texts() {
    return Object.fromEntries(this.fields.map((field) => [field.name, field.text]));
  }

  /** The fields that differ from the page's preset. */
  get changed() {
    return Object.fromEntries(this.fields.filter((f) => f.text !== f.preset).map((f) => [f.name, f.text]));
  }

  /** What a link carries: the shop's own values as well, so that it means the same once they are others. */
  get linked() {
    return Object.fromEntries(this.fields.filter((f) => f.house || f.text !== f.preset).map((f) => [f.name, f.text]));
  }

  /** Put inputs in; fields they do not name get the preset. @param {Record<string, string> | undefined} changed */
  fill(changed) {
    if (!changed) return;
    for (const field of this.fields) field.text = changed[field.name] ?? field.preset;
    remember(this.key, this.changed);
    this.question();
  }

  /** @param {boolean} [finished] the person has left the field: errors need not wait */
  typed(finished = false) {
    this.lastTyped = finished ? 0 : Date.now();
    for (const field of this.fields) {
      field.toggleOther();
      field.followBox();
    }
    remember(this.key, this.changed);
    this.drop("errors", "speak"); // what was not said yet belongs to older text
    this.later("ask", finished ? 0 : AFTER_TYPING, () => this.question());
  }

  /** A slide moves faster than answers come: each is shown, then the newest place is asked. */
  async slid() {
    remember(this.key, this.changed);
    this.moved = true;
    if (this.sliding) return;
    this.sliding = true;
    while (this.moved) {
      this.moved = false;
      await this.question();
    }
    this.sliding = false;
  }

  async question() {
    const round = ++this.round;
    this.later("old", isReady() ? 400 : 0, () => this.markOld("Working it out. This is still the old answer."));
    try {
      const answer = await ask(this.key, this.slug, this.texts, this.house);
      if (!answer || round !== this.round) return;
      this.drop("old");
      if (answer.errors) this.refuse(answer.errors);
      else this.show(answer);
    } catch {
      if (round !== this.round) return;
      this.markOld("The calculator could not start on this device. The answer shown does not follow your numbers. ");
      this.status.append(button("Try again", () => this.question()));
    }
  }

  /** @param {import("./python-runtime.js").Answer} answer */
  show(answer) {
    for (const field of this.fields) {
      field.showError(undefined);
      field.box.hidden = !(field.name in (answer.inputs ?? {})); // some fields count only with some choices
    }
    if (answer.html !== this.shown || "stale" in this.panel.dataset) this.status.textContent = "";
    if (answer.html !== this.shown) this.replaceAnswer(answer.html ?? "");
    delete this.panel.dataset.stale;
    const own = Object.keys(this.changed).length > 0;
    this.panel.toggleAttribute("data-own-numbers", own); // the example's values are nobody's to keep
    if (own || fromAddress(this.slug)) {
      history.replaceState(history.state, "", linkTo(this.slug, this.linked));
    }
    this.later("speak", BEFORE_SPEAKING, () => {
      const [label, number] = [".result-label", ".number"].map((part) => this.panel.querySelector(part)?.textContent);
      this.status.textContent = `Up to date. ${label ?? ""}: ${number ?? ""}`;
    });
  }

  /** Put another answer in; parts the person closed stay closed. @param {string} html */
  replaceAnswer(html) {
    const words = (/** @type {Element} */ part) => part.querySelector("summary")?.textContent;
    const open = new Map([...this.panel.querySelectorAll("details")].map((part) => [words(part), part.open]));
    this.panel.innerHTML = html;
    for (const link of /** @type {NodeListOf<HTMLAnchorElement>} */ (this.panel.querySelectorAll("a[data-page]"))) {
      link.href = new URL(`../../${link.dataset.page}/`, import.meta.url).href; // the site's root is two folders up
    }
    for (const part of this.panel.querySelectorAll("details")) part.open = open.get(words(part)) ?? part.open;
    this.shown = html;
  }

  /** @param {Record<string, string>} errors */
  refuse(errors) {
    for (const field of this.fields) if (!(field.name in errors)) field.showError(undefined);
    const whole = errors[""] ? `${errors[""].replace(/\.?$/, ".")} ` : "";
    const quiet = Math.max(0, this.lastTyped + BEFORE_ERRORS - Date.now());
    this.later("errors", quiet, () => {
      for (const field of this.fields) field.showError(errors[field.name]);
      this.markOld(`${whole}The answer shown is out of date: it belongs to the numbers before.`);
    });
  }

  /** @param {string} sentence */
  markOld(sentence) {
    this.drop("old");
    this.panel.dataset.stale = "";
    this.status.textContent = sentence;
  }

  /** @param {Element} target */
  clicked(target) {
    if (target.closest("[data-reset]")) this.reset();
    else if (target.closest("[data-print]")) window.print();
    else if (target.closest("[data-copy-link]")) this.copyLink();
  }

  /** Back to the page's own example and its answer, which needs no Python. */
  reset() {
    this.round += 1; // whatever is still on its way comes too late
    this.drop(...Object.keys(this.timers));
    for (const field of this.fields) field.reset();
    remember(this.key, {});
    if (fromAddress(this.slug)) history.replaceState(history.state, "", location.pathname + location.search);
    this.replaceAnswer(this.example);
    this.panel.removeAttribute("data-own-numbers");
    delete this.panel.dataset.stale;
    this.status.textContent = this.greeting;
  }

  async copyLink() {
    const link = linkTo(this.slug, this.linked);
    try {
      await navigator.clipboard.writeText(link);
      this.status.textContent = "Link copied. It carries all the numbers above.";
    } catch {
      this.status.textContent = `Copy this link: ${link}`; // no clipboard without HTTPS
    }
  }

  /** Do something after a while, unless it is put off again. @param {string} what @param {number} ms @param {() => void} action */
  later(what, ms, action) {
    this.drop(what);
    if (ms) this.timers[what] = setTimeout(action, ms);
    else action();
  }

  /** @param {...string} whats */
  drop(...whats) {
    for (const what of whats) clearTimeout(this.timers[what]);
  }
}

const nearly = { rootMargin: "600px" };
const nearScreen = new IntersectionObserver((seen) => seen.some((one) => one.isIntersecting) && start(), nearly);
/** @type {NodeListOf<HTMLFormElement>} */ (document.querySelectorAll("form.calculator")).forEach((form, index) => {
  new CalculatorForm(form, index);
  nearScreen.observe(form);
});
