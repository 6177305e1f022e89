// A scanner that types like a keyboard: a burst of keys ended by Enter opens what was scanned.
// People type slower than this, so fields stay theirs; what a burst typed into one is taken out,
// unless the field is for what is scanned.
"use strict";
(() => {
  const NEXT_KEY_MS = 50;
  const SHORTEST = 6;
  let keys = "";
  let last = 0;
  let field = null;
  let before = "";

  const typable = (one) =>
    one instanceof HTMLTextAreaElement ||
    (one instanceof HTMLInputElement && !["checkbox", "radio", "button", "submit"].includes(one.type));

  const unsaved = () =>
    [...document.querySelectorAll("main form[method=post] :is(input, textarea, select)")].some((one) => {
      if (one === field || one.type === "hidden") return false;
      if (one.type === "checkbox" || one.type === "radio") return one.checked !== one.defaultChecked;
      if (one instanceof HTMLSelectElement) {
        const meant = [...one.options].findIndex((option) => option.defaultSelected);
        return one.selectedIndex !== Math.max(0, meant);
      }
      return one.value !== one.defaultValue;
    });

  // on a page with a list to tick, what is scanned is ticked
  const tick = (code) => {
    const one = [...document.querySelectorAll("input[type=checkbox][data-codes]")].find((box) =>
      box.dataset.codes.toUpperCase().split(" ").includes(code.toUpperCase()));
    if (!one) return false;
    one.checked = true;
    one.focus();
    one.scrollIntoView({ block: "center" });
    return true;
  };

  const open = (code) => {
    const waiting = document.getElementById("scan-top");
    if (unsaved() && waiting) {
      waiting.value = code;
      waiting.closest("details").open = true;
      waiting.focus();
      document.getElementById("scan-unsaved").hidden = false;
    } else {
      window.location.assign("/scan?code=" + encodeURIComponent(code));
    }
  };

  document.addEventListener("keydown", (event) => {
    const target = event.target;
    if (target instanceof HTMLElement && target.dataset.scan !== undefined) return;
    const separator = event.key === "\u001d" || (event.ctrlKey && event.key === "]");
    const printable = event.key.length === 1 && !event.altKey && !event.metaKey && !event.ctrlKey;
    if (event.key === "Enter") {
      const scanned = keys.length >= SHORTEST && event.timeStamp - last <= NEXT_KEY_MS;
      const code = keys;
      keys = "";
      if (!scanned) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (field && field.dataset.scanHere !== undefined) {
        field.value = code;
        field.dispatchEvent(new Event("input", { bubbles: true }));
        return;
      }
      if (field) {
        field.value = before;
        field.dispatchEvent(new Event("input", { bubbles: true }));
      }
      if (!tick(code)) open(code);
      return;
    }
    if (!printable && !separator) {
      if (!["Shift", "Control", "AltGraph", "CapsLock"].includes(event.key)) keys = "";
      return;
    }
    if (event.repeat || keys === "" || event.timeStamp - last > NEXT_KEY_MS) {
      keys = "";
      field = typable(target) ? target : null;
      before = field ? field.value : "";
      if (event.repeat) return;
    }
    keys += separator ? "\u001d" : event.key;
    last = event.timeStamp;
  }, true);
})();
