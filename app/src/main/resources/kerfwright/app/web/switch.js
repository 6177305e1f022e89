// Big keys for gloved fingers; without this file the field takes the digits.
"use strict";
const pin = document.getElementById("pin");
const keys = document.getElementById("keys");
if (keys) {
  keys.hidden = false;
  document.getElementById("plain").hidden = true;
  keys.addEventListener("click", (event) => {
    const digit = event.target.dataset.digit;
    if (digit === undefined) return;
    pin.value = digit === "" ? pin.value.slice(0, -1) : (pin.value + digit).slice(0, 6);
  });
}
