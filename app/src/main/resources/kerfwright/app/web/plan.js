// The plan page: moving along the heat curve shows step and depth; copying link and text.
"use strict";
(() => {
  const SVG = "http://www.w3.org/2000/svg";
  const trace = document.getElementById("trace");
  const slider = document.getElementById("scrub");
  const figure = document.getElementById("chart-heat");

  function said(of, name, ...values) {
    return values.reduce((text, value, i) => text.replace("{" + i + "}", value), of.dataset[name]);
  }

  function mark(svg, kind) {
    const line = document.createElementNS(SVG, "path");
    line.setAttribute("class", kind);
    svg.append(line);
    return line;
  }

  if (trace && slider && figure.chart) {
    const data = JSON.parse(trace.value);
    const { x: times, y: typical } = figure.chart.data.lines[0];
    const { low, high } = figure.chart.data.band;
    const section = document.querySelector(".hero svg");
    const depth = section && section.querySelector(".depth-scale");
    const told = document.getElementById("scrub-told");
    const level = depth && mark(section, "scrub-line");
    slider.max = String(Math.floor(figure.chart.data.end));
    slider.closest("[hidden]").hidden = false;

    const at = (values, s) => {
      const i = Math.max(0, times.findIndex((t) => t >= s));
      if (i === 0) return values[0];
      const share = (s - times[i - 1]) / (times[i] - times[i - 1]);
      return values[i - 1] + Math.min(1, share) * (values[i] - values[i - 1]);
    };
    const written = (number, digits) => {
      const text = number.toFixed(digits).replace(/^-(?=[0.]+$)/, "").replace("-", "\u2212");
      return figure.chart.data.comma ? text.replace(".", ",") : text;
    };
    const reached = (s) =>
      data.steps.reduce((deepest, step) => {
        if (s < step.fromS) return deepest;
        const share = Math.min(1, (s - step.fromS) / Math.max(1e-9, step.toS - step.fromS));
        return Math.max(deepest, step.fromMm + share * (step.toMm - step.fromMm));
      }, 0);

    const show = () => {
      const s = Number(slider.value);
      figure.chart.move(s);
      const mm = reached(s);
      const step = data.steps.find((one) => s >= one.fromS && s <= one.toS);
      if (level) {
        const of = depth.dataset;
        const floor = Number(of.top) + Number(of.perMm) * mm;
        level.setAttribute("d", "M" + of.left + " " + floor + "H" + of.right);
      }
      document.querySelectorAll("section.step").forEach((card) => {
        card.classList.toggle("now", Boolean(step) && card.dataset.order === String(step.order));
      });
      const doing = step
        ? said(told, "step", step.order, step.name)
        : said(told, s > data.steps[data.steps.length - 1].toS ? "after" : "change");
      const words = said(told, "told", written(s, 0), written(at(typical, s), 1), written(at(low, s), 1), written(at(high, s), 1), doing, written(mm, 1));
      told.textContent = words;
      slider.setAttribute("aria-valuetext", words);
    };
    slider.addEventListener("input", show);
    figure.addEventListener("chart-read", (event) => {
      slider.value = String(event.detail);
      show();
    });
    show();
  }

  const copied = document.getElementById("copied");
  const copy = async (text) => {
    try {
      await navigator.clipboard.writeText(text);
      copied.textContent = copied.dataset.done;
    } catch (denied) {
      copied.textContent = copied.dataset.failed;
    }
  };
  document.querySelectorAll("[data-copy-link]").forEach((button) => {
    button.hidden = false;
    button.addEventListener("click", () => copy(location.href));
  });
  document.querySelectorAll("[data-copy-text]").forEach((link) => {
    link.addEventListener("click", async (event) => {
      event.preventDefault();
      const answer = await fetch(link.href);
      copy(await answer.text());
    });
  });
  document.documentElement.classList.add("scripted");
  document.addEventListener("input", (event) => {
    const of = event.target.dataset;
    if (!of.shows) return;
    const number = Number(event.target.value);
    const grouped = number.toLocaleString("en").replaceAll(",", "\u00a0");
    const written = String(number).replace(".", of.comma === "true" ? "," : ".");
    document.getElementById(of.shows).textContent = number >= 10000 ? grouped : written;
  });
})();
