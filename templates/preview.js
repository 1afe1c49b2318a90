// Asks for news, shows the faults, and brings the guide up to date: only what is new in it is put in, so that the page
// keeps its place and most of its layout. Where a control comes or goes the guide's own script begins anew.
(() => {
  const byId = (id) => document.getElementById(id);
  const pause = (ms) => new Promise((done) => setTimeout(done, ms));
  let number = 0, guide = 0, shown = null, written = null;

  // Drawings are most of a page, and most of them stay: a number stands for each, and it is read only where it changes.
  // What is read is read in the frame, under the guide's policy.
  let drawings = new Map(), told = new Map(), last = 0;
  const parsed = (page) => {
    const now = new Map();
    const bare = page.replace(/<svg\b[^]*?<\/svg>/g, (drawing) => {
      if (!now.has(drawing)) now.set(drawing, drawings.get(drawing) ?? (last += 1));
      return `<svg data-drawing="${now.get(drawing)}"></svg>`;
    });
    told = new Map([...drawings, ...now].map(([drawing, number]) => [String(number), drawing]));
    drawings = now;
    return new shown.contentWindow.DOMParser().parseFromString(bare, "text/html");
  };
  const drawn = (stands) => {
    const holder = shown.contentDocument.createElement("template");
    holder.innerHTML = told.get(stands.dataset.drawing);
    return holder.content.firstElementChild;
  };
  const imported = (node) => {
    const holder = shown.contentDocument.createElement("template");
    holder.content.append(node.cloneNode(true));
    holder.content.querySelectorAll("svg[data-drawing]").forEach((stands) => stands.replaceWith(drawn(stands)));
    return shown.contentDocument.importNode(holder.content, true);
  };

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

  const CONTROLS = "form, input, button", LOADED = "script, style, meta";
  const holds = (nodes, what) => nodes.some((node) => node.nodeType === Node.ELEMENT_NODE
    && (node.matches(what) || node.querySelector(what) !== null));

  // Notes in `found` the changes that make `live` from what was written before what is written now; false where only
  // loading can. What the guide's script has set in `live` was never written: it stays.
  const compare = (live, before, now, found) => {
    if (before.isEqualNode(now)) return true;
    if (before.dataset?.drawing && now.dataset?.drawing) return compare(live, drawn(before), drawn(now), found);
    if (live.nodeName !== before.nodeName || live.childNodes.length !== before.childNodes.length) return false;
    if (before.nodeName !== now.nodeName) return swap(live.parentNode, [live], [now], live, found);
    if (before.nodeType !== Node.ELEMENT_NODE) {
      found.changes.push(() => { live.nodeValue = now.nodeValue; });
      return true;
    }
    if (before.matches(LOADED)) return false;
    for (const { name } of [...before.attributes, ...now.attributes]) {
      const value = now.getAttribute(name);
      if (value === before.getAttribute(name)) continue;
      found.changes.push(() => (value === null ? live.removeAttribute(name) : live.setAttribute(name, value)));
    }
    const [olds, news, lives] = [before, now, live].map((of) => [...of.childNodes]);
    let start = 0;
    while (start < Math.min(olds.length, news.length) && olds[start].isEqualNode(news[start])) start += 1;
    // What is more or less stands where the first difference is; all behind it is paired from the end.
    const paired = Math.min(olds.length, news.length) - start;
    const [gone, come] = [lives, news].map((of) => of.slice(start, of.length - paired));
    for (let left = paired; left > 0; left -= 1) {
      if (!compare(lives.at(-left), olds.at(-left), news.at(-left), found)) return false;
    }
    return swap(live, gone, come, lives[start + gone.length] ?? null, found);
  };

  const swap = (within, gone, come, place, found) => {
    if (holds([...gone, ...come], LOADED)) return false;
    found.anew ||= holds([...gone, ...come], CONTROLS);
    // Before the changes of what stands behind, so that the place is still there.
    found.changes.unshift(() => {
      come.forEach((node) => within.insertBefore(imported(node), place));
      gone.forEach((node) => node.remove());
    });
    return true;
  };

  // Fresh controls hear nothing yet, and the same script, which the guide's policy lets in, takes them up.
  const beginAnew = (live) => {
    live.querySelectorAll("form, :not(form) > input, :not(form) > button").forEach((old) => old.replaceWith(old.cloneNode(true)));
    const old = live.querySelector("script"), again = live.createElement("script");
    again.textContent = old.textContent;
    old.replaceWith(again);
  };

  const put = (of, page) => {
    const live = shown?.contentDocument;
    // The frame may have been given a later guide than the one it asked for.
    if (!live || live.documentElement.dataset.key !== written.documentElement.dataset.key) { load(of, page); return; }
    const now = parsed(page), found = { changes: [], anew: false };
    if (!compare(live.documentElement, written.documentElement, now.documentElement, found)) { load(of, page); return; }
    found.changes.forEach((change) => change());
    if (found.anew) beginAnew(live);
    guide = of;
    written = now;
    document.body.dataset.guide = of;
  };

  const show = (state, page) => {
    number = state.number;
    const sound = state.guide === state.number;
    byId("report").textContent = state.report;
    byId("report").hidden = !state.report;
    document.body.dataset.state = sound ? "sound" : "faulty";
    const kept = state.guide ? "; below is the last good guide" : "; there is no guide yet";
    byId("note").textContent = sound ? (state.report ? "sound, with " + state.tally : "sound") : state.tally + kept;
    document.body.dataset.number = number;
    if (state.guide && state.guide !== guide) put(state.guide, page);
  };

  const follow = async () => {
    for (;;) {
      try {
        const answer = await fetch("state?after=" + number + "&guide=" + guide, { cache: "no-store" });
        const text = await answer.text(), end = text.indexOf("\n");
        const state = JSON.parse(text.slice(0, end));
        if (state.number !== number) show(state, text.slice(end + 1));
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
