"use strict";
// Asks for news, shows the faults, and brings the guide up to date: only what is new in it is put in, so that the page
// keeps its place, its ticks and most of its layout. Where a control comes or goes the guide is loaded anew.
(() => {
  const byId = (id) => document.getElementById(id);
  const pause = (ms) => new Promise((done) => setTimeout(done, ms));
  let number = 0, guide = 0, shown = null, written = null;

  // The frame's own parser: its policy is the guide's.
  const parsed = (page) => new shown.contentWindow.DOMParser().parseFromString(page, "text/html");

  const load = (of, page) => {
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
      written = parsed(page);
      next.className = "";
      document.body.dataset.guide = of;
    });
    byId("guide").append(next);
  };

  // What the guide's own script listens to, or the page is built with: the script has to begin anew.
  const FIXED = "html, head, body, script, style, meta, button, form, input";
  const isFixed = (node) => node.nodeType === Node.ELEMENT_NODE && (node.matches(FIXED) || node.querySelector(FIXED) !== null);

  // The changes that make `live` from what was written before what is written now, or null where it can't be changed so.
  // The guide's script has set things in `live` that were never written: they stay.
  const changes = (live, before, now, found = []) => {
    if (before.isEqualNode(now)) return found;
    if (live.nodeName !== before.nodeName || live.childNodes.length !== before.childNodes.length) return null;
    if (before.nodeName !== now.nodeName) {
      if (isFixed(before) || isFixed(now)) return null;
      found.push(() => live.replaceWith(live.ownerDocument.importNode(now, true)));
      return found;
    }
    if (before.nodeType !== Node.ELEMENT_NODE) {
      found.push(() => { live.nodeValue = now.nodeValue; });
      return found;
    }
    if (before.matches("script, style, meta")) return null;
    for (const { name } of [...before.attributes, ...now.attributes]) {
      const value = now.getAttribute(name);
      if (value === before.getAttribute(name)) continue;
      found.push(() => (value === null ? live.removeAttribute(name) : live.setAttribute(name, value)));
    }
    const [olds, news, lives] = [before, now, live].map((of) => [...of.childNodes]);
    let start = 0, end = 0;
    const fewer = Math.min(olds.length, news.length);
    while (start < fewer && olds[start].isEqualNode(news[start])) start += 1;
    while (end < fewer - start && olds[olds.length - 1 - end].isEqualNode(news[news.length - 1 - end])) end += 1;
    const paired = fewer - end;
    for (let at = start; at < paired; at += 1) {
      if (changes(lives[at], olds[at], news[at], found) === null) return null;
    }
    const gone = olds.slice(paired, olds.length - end), come = news.slice(paired, news.length - end);
    if ([...gone, ...come].some(isFixed)) return null;
    const place = lives[olds.length - end] ?? null;
    found.push(() => {
      lives.slice(paired, olds.length - end).forEach((child) => child.remove());
      come.forEach((child) => live.insertBefore(live.ownerDocument.importNode(child, true), place));
    });
    return found;
  };

  const put = (of, page) => {
    const live = shown?.contentDocument;
    // The frame may have been given a later guide than the one it asked for.
    if (!live || live.documentElement.dataset.key !== written.documentElement.dataset.key) { load(of, page); return; }
    const now = parsed(page);
    const found = changes(live.documentElement, written.documentElement, now.documentElement);
    if (found === null) { load(of, page); return; }
    found.forEach((change) => change());
    guide = of;
    written = now;
    document.body.dataset.guide = of;
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
    if (state.guide && state.guide !== guide) put(state.guide, state.page);
  };

  const follow = async () => {
    for (;;) {
      try {
        const answer = await fetch("state?after=" + number + "&guide=" + guide, { cache: "no-store" });
        const state = await answer.json();
        if (state.number !== number) show(state);
      } catch {
        document.body.dataset.state = "faulty";
        byId("note").textContent = "the preview was stopped; start it again in the terminal";
        number = guide = 0;
        await pause(1000);
      }
    }
  };
  follow();
})();
