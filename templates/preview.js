"use strict";
// Asks for news, shows the faults, and puts the new guide where the old one stood, at the same place of the page.
(() => {
  const byId = (id) => document.getElementById(id);
  const pause = (ms) => new Promise((done) => setTimeout(done, ms));
  let number = 0, guide = 0, shown = null;

  const put = (of) => {
    guide = of;
    const next = document.createElement("iframe");
    next.title = "The guide";
    next.className = "coming";
    next.src = "guide?of=" + of;
    next.addEventListener("load", () => {
      if (of !== guide) { next.remove(); return; }
      if (shown) {
        next.contentWindow.scrollTo({ top: shown.contentWindow.scrollY, behavior: "instant" });
        shown.remove();
      }
      shown = next;
      next.className = "";
      document.body.dataset.guide = of;
    });
    byId("guide").append(next);
  };

  const show = (state) => {
    number = state.number;
    const sound = state.guide === state.number;
    byId("report").textContent = state.report;
    byId("report").hidden = !state.report;
    document.body.dataset.state = sound ? "sound" : "faulty";
    const kept = state.guide ? "; below is the last good guide" : "; there is no guide yet";
    byId("note").textContent = sound ? (state.report ? "sound, with " + state.tally : "sound") : state.tally + kept;
    document.body.dataset.number = number;
    if (state.guide && state.guide !== guide) put(state.guide);
  };

  const follow = async () => {
    for (;;) {
      try {
        const answer = await fetch("state?after=" + number, { cache: "no-store" });
        const state = await answer.json();
        if (state.number !== number) show(state);
      } catch {
        document.body.dataset.state = "faulty";
        byId("note").textContent = "the preview was stopped; start it again in the terminal";
        number = 0;
        await pause(1000);
      }
    }
  };
  follow();
})();
