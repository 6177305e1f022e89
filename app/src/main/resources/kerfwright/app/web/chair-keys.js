// Keyboard, foot switch and scanner. A scanner types a code without a break and ends it with
// Enter; a foot switch sends PageDown and PageUp.
const FAST_MS = 400;
const LEAST = 2;

export function listen(on) {
  let typed = "";
  let last = 0;
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target.closest("input, textarea, select")) return;
    const quick = event.timeStamp - last < FAST_MS;
    last = event.timeStamp;
    if (event.key.length === 1 && event.key !== " ") {
      typed = quick ? typed + event.key : event.key;
      return;
    }
    if (event.key === "Enter" && quick && typed.length >= LEAST) {
      const code = typed;
      typed = "";
      event.preventDefault();
      on.scan(code);
      return;
    }
    if (event.key === "Shift") return;
    typed = "";
    if (document.querySelector("dialog[open]")) return;
    const pressed = event.key === " " || event.key === "Enter";
    if (pressed && event.target.closest("button, a, summary")) return;
    if (pressed || event.key === "ArrowRight" || event.key === "PageDown") {
      event.preventDefault();
      if (!event.repeat) on.forward();
    } else if (event.key === "ArrowLeft" || event.key === "PageUp") {
      event.preventDefault();
      if (!event.repeat) on.back();
    }
  });
}
