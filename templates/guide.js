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
      box.closest(".step").scrollIntoView({ block: "center" });
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
