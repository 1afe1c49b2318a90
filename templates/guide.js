"use strict";
// Ticks are kept in the reader's own browser with what their sentences said: one that says otherwise asks again.
(() => {
  const page = document.documentElement;
  const boxes = [...document.querySelectorAll(".step input")];
  const ticksKey = "furbelow.ticks." + page.dataset.work;

  const recall = (key) => {
    try { return localStorage.getItem(key); } catch { return null; }
  };
  const keep = (key, value) => {
    try { localStorage.setItem(key, value); } catch { /* a page that may not store still works, without memory */ }
  };

  if (boxes.length) {
    // Every count of steps done, in the words of the guide's language.
    const told = JSON.parse(document.getElementById("bar").dataset.done);
    const show = () => {
      const done = boxes.filter((box) => box.checked).length;
      document.getElementById("far").value = done;
      document.getElementById("far-words").textContent = told[done];
      document.getElementById("next").disabled = done === boxes.length;
    };
    const goTo = (box) => {
      if (page.dataset.view === "step") single(box.closest(".step"));
      box.closest(".step").scrollIntoView({ block: "start" });
      box.focus({ preventScroll: true });
    };

    const said = (box) => box.closest(".step").dataset.said;
    let ticked = {};
    try { ticked = Object(JSON.parse(recall(ticksKey))); } catch { /* not ours; begin anew */ }
    for (const box of boxes) {
      box.checked = Object.hasOwn(ticked, box.value) && ticked[box.value] === said(box);
      box.addEventListener("change", () => {
        const done = boxes.filter((each) => each.checked).map((each) => [each.value, said(each)]);
        keep(ticksKey, JSON.stringify(Object.fromEntries(done)));
        show();
      });
    }

    // One step at a time: what leads to it and it alone are shown, with the drawings of its row.
    const steps = [...document.querySelectorAll(".step")];
    const around = "main > section, .first, .operation, .row, .step";
    const single = (step) => {
      for (const each of document.querySelectorAll(".now")) each.classList.remove("now");
      for (const each of document.querySelectorAll(around)) if (each.contains(step)) each.classList.add("now");
      page.dataset.view = "step";
      const at = steps.indexOf(step);
      document.getElementById("place").textContent = `${step.id} (${at + 1} / ${steps.length})`;
      document.getElementById("back").disabled = at === 0;
      document.getElementById("on").disabled = at === steps.length - 1;
      document.getElementById("stepper").hidden = false;
      document.getElementById("single").setAttribute("aria-pressed", "true");
      keep("furbelow.at." + page.dataset.work, step.id);
    };
    const whole = () => {
      const step = document.querySelector(".step.now");
      delete page.dataset.view;
      document.getElementById("stepper").hidden = true;
      document.getElementById("single").setAttribute("aria-pressed", "false");
      keep("furbelow.at." + page.dataset.work, "");
      if (step) step.scrollIntoView({ block: "start" });
    };
    const move = (by) => {
      single(steps[steps.indexOf(document.querySelector(".step.now")) + by]);
      scrollTo({ top: 0, behavior: "instant" });
    };
    document.getElementById("single").addEventListener("click", () => {
      if (page.dataset.view === "step") { whole(); return; }
      single((boxes.find((box) => !box.checked) || boxes[0]).closest(".step"));
      scrollTo({ top: 0, behavior: "instant" });
    });
    document.getElementById("back").addEventListener("click", () => move(-1));
    document.getElementById("on").addEventListener("click", () => move(1));
    document.getElementById("all").addEventListener("click", whole);
    const left = steps.find((step) => step.id === recall("furbelow.at." + page.dataset.work));
    if (left) single(left);

    document.getElementById("next").addEventListener("click", () => {
      const first = boxes.find((box) => !box.checked);
      if (first) goTo(first);
    });
    document.getElementById("jump").addEventListener("submit", (event) => {
      event.preventDefault();
      const asked = document.getElementById("jump-to").value.replace(/\s/g, "").toUpperCase();
      const box = boxes.find((each) => each.closest(".step").id.toUpperCase() === asked);
      if (box) goTo(box);
    });
    show();
    document.getElementById("bar").hidden = false;
  }

  // A drawing is enlarged by a tap, or from the keyboard by its button.
  const larger = document.getElementById("larger");
  if (larger) {
    const enlarge = (button) => {
      const drawing = button.parentElement.querySelector(".sheet").firstElementChild;
      document.getElementById("large-sheet").replaceChildren(drawing.cloneNode(true));
      larger.showModal();
    };
    for (const each of document.querySelectorAll(".enlarge")) each.addEventListener("click", () => enlarge(each));
    document.getElementById("smaller").addEventListener("click", () => larger.close());
  }

  // A link to a reason opens it; not every browser does so by itself.
  const reveal = () => {
    const asked = document.getElementById(location.hash.slice(1));
    const closed = asked && asked.closest("details:not([open])");
    if (closed) {
      closed.open = true;
      asked.scrollIntoView();
    }
  };
  addEventListener("hashchange", reveal);
  reveal();

  const dark = document.getElementById("dark");
  const large = document.getElementById("large");
  const system = matchMedia("(prefers-color-scheme: dark)");
  const isDark = () => (page.dataset.look ? page.dataset.look === "dark" : system.matches);
  const showLook = () => {
    dark.setAttribute("aria-pressed", String(isDark()));
    large.setAttribute("aria-pressed", String(page.dataset.print === "large"));
  };
  if (["dark", "light"].includes(recall("furbelow.look"))) page.dataset.look = recall("furbelow.look");
  if (recall("furbelow.print") === "large") page.dataset.print = "large";
  dark.addEventListener("click", () => {
    page.dataset.look = isDark() ? "light" : "dark";
    keep("furbelow.look", page.dataset.look);
    showLook();
  });
  large.addEventListener("click", () => {
    if (page.dataset.print === "large") delete page.dataset.print;
    else page.dataset.print = "large";
    keep("furbelow.print", page.dataset.print || "");
    showLook();
  });
  system.addEventListener("change", showLook);

  showLook();
  document.getElementById("aids").hidden = false;
})();
