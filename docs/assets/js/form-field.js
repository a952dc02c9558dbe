// One field of a calculator's form: its text, its preset and its error.

export class FormField {
  /** @param {HTMLElement} box the element with data-field */
  constructor(box) {
    this.box = box;
    this.name = box.dataset.field ?? "";
    this.house = "houseValue" in box.dataset; // its preset is the shop's
    const control = box.querySelector(`[name="${CSS.escape(this.name)}"]`);
    this.control = /** @type {HTMLInputElement | HTMLSelectElement} */ (control);
    this.preset = this.control.dataset.example ?? "";
    this.other = /** @type {HTMLInputElement | null} */ (
      this.control.dataset.other ? document.getElementById(this.control.dataset.other) : null
    );
    this.slide = /** @type {HTMLInputElement | null} */ (box.querySelector("[data-slide]"));
    this.slide?.addEventListener("input", () => {
      this.control.value = this.slide?.value ?? ""; // before the form hears of it
    });
    this.hiddenAtFirst = box.hidden;
    this.error = /** @type {HTMLElement} */ (box.querySelector(".field-error"));
    this.toggleOther();
  }

  /** What the person entered, as Python reads it. */
  get text() {
    return this.other && this.control.value === "other" ? this.other.value : this.control.value;
  }

  set text(text) {
    if (this.control instanceof HTMLSelectElement && ![...this.control.options].some((o) => o.value === text)) {
      if (!this.other) return; // a link from an edition with other choices
      this.control.value = "other";
      this.other.value = text;
    } else {
      this.control.value = text;
    }
    this.followBox();
    this.toggleOther();
  }

  /** Move the slide to what stands in the box. */
  followBox() {
    if (this.slide && document.activeElement !== this.slide) this.slide.value = String(parseFloat(this.text) || 0);
  }

  /** Back to the page's preset. */
  reset() {
    this.text = this.preset;
    this.showError(undefined);
    this.box.hidden = this.hiddenAtFirst;
  }

  /** Show the box for a text of one's own only while "other" is chosen. */
  toggleOther() {
    if (!this.other) return;
    const box = /** @type {HTMLElement} */ (this.other.closest("[data-other-box]") ?? this.other);
    box.hidden = this.control.value !== "other";
  }

  /** @param {string | undefined} sentence */
  showError(sentence) {
    if (this.error.textContent !== (sentence ?? "")) this.error.textContent = sentence ?? "";
    this.error.hidden = !sentence;
    const typedIn = this.other && this.control.value === "other" ? this.other : this.control;
    for (const control of [this.control, this.other]) {
      if (sentence && control === typedIn) control.setAttribute("aria-invalid", "true");
      else control?.removeAttribute("aria-invalid");
    }
    if (!sentence) return;
    this.box.hidden = false;
    const group = this.box.closest("details"); // an error behind a closed lid would be told to nobody
    if (group) group.open = true;
  }
}
