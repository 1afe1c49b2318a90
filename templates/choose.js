"use strict";
// The choices of the spec as controls: a move asks for the garment so chosen, and the answer is put in beside them.
// One question is under way at a time; what moved meanwhile is asked next.
(() => {
  const byId = (id) => document.getElementById(id);
  const put = (id, text) => { if (byId(id).textContent !== text) byId(id).textContent = text; };
  const made = (tag, set = {}, ...inside) => {
    const node = Object.assign(document.createElement(tag), set);
    node.append(...inside);
    return node;
  };
  const chosen = new Map();
  let size = "", shape = "", picture = "", asking = false, again = false, tried = 0;

  const ask = async () => {
    if (asking) { again = true; return; }
    asking = true;
    do {
      again = false;
      const asked = new URLSearchParams([["size", size], ...[...chosen].map(([name, value]) => ["set", name + "=" + value])]);
      try {
        const answer = await fetch("try?" + asked, { cache: "no-store" });
        show(await answer.json());
      } catch { /* the preview was stopped, and its own line says so */ }
    } while (again);
    asking = false;
  };

  const choose = (name, value) => { chosen.set(name, value); ask(); };

  // A list where there are few values, else a slider that says its value in words.
  const control = (each, at) => {
    const id = "choice-" + at;
    if (each.listed) {
      const list = made("select", { id }, ...each.shown.map((text, of) => made("option", { value: each.values[of], textContent: text })));
      list.addEventListener("change", () => choose(each.name, list.value));
      return [list, () => {}];
    }
    const slider = made("input", { id, type: "range", min: 0, max: each.values.length - 1, step: 1 });
    const said = made("span", { className: "value" });
    const say = () => {
      said.textContent = each.shown[slider.value];
      slider.setAttribute("aria-valuetext", each.shown[slider.value]);
    };
    slider.addEventListener("input", () => { say(); choose(each.name, each.values[slider.value]); });
    return [slider, say, said];
  };

  const row = (label, id, ...inside) => made("p", {}, made("label", { htmlFor: id, textContent: label }), ...inside);

  const build = (told) => {
    const rows = [];
    if (told.sizes.length) {
      const sizes = made("select", { id: "size" }, ...told.sizes.map((name) => made("option", { value: name, textContent: name })));
      sizes.addEventListener("change", () => { size = sizes.value; ask(); });
      rows.push(row(told.labels["preview-size"], "size", sizes));
    }
    told.controls.forEach((each, at) => {
      const [input, , said] = control(each, at);
      rows.push(row(each.label, "choice-" + at, input, ...(said ? [said] : [])));
    });
    byId("controls").replaceChildren(...rows);
  };

  const settle = (told) => {
    if (byId("size")) byId("size").value = told.size;
    told.controls.forEach((each, at) => {
      const input = byId("choice-" + at);
      // What was moved on since is asked next, and stays as it is.
      if (again && chosen.has(each.name)) return;
      const now = each.listed ? each.values[each.now] : String(each.now);
      if (input.value !== now) input.value = now;
      if (!each.listed) {
        input.setAttribute("aria-valuetext", each.shown[each.now]);
        if (input.nextElementSibling.textContent !== each.shown[each.now]) input.nextElementSibling.textContent = each.shown[each.now];
      }
    });
  };

  const draw = (told) => {
    if (told.picture === picture) return;
    picture = told.picture;
    const drawn = new DOMParser().parseFromString(told.picture, "image/svg+xml").documentElement;
    byId("drawing").replaceChildren(document.importNode(drawn, true));
    byId("drawing").setAttribute("aria-label", told.alt);
    put("caption", told.caption);
  };

  const show = (told) => {
    const sound = told.rows.length > 0;
    if (told.controls.length || told.sizes.length) {
      byId("choose").lang = told.language;
      byId("choose").hidden = false;
      for (const name of ["choices", "as-written", "command", "copy"]) put("say-" + name, told.labels["preview-" + name]);
      const now = JSON.stringify([told.sizes, told.controls.map((each) => [each.name, each.label, each.shown])]);
      if (now !== shape) { shape = now; build(told); }
      size = told.size;
      settle(told);
      byId("command").value = told.command;
      byId("command").dataset.copied = told.labels["preview-copied"];
      byId("wrong").dataset.said = told.labels["preview-not-sound"];
    }
    if (told.picture) draw(told);
    byId("drawing").classList.toggle("stale", !told.picture);
    byId("takes").replaceChildren(...told.rows.flatMap(({ label, value }) => [
      made("dt", { textContent: label }), made("dd", { textContent: value })]));
    byId("takes").hidden = !sound;
    byId("wrong").hidden = sound;
    put("wrong", sound ? "" : (byId("wrong").dataset.said ?? "") + "\n" + told.report);
    put("heard", told.rows.map(({ label, value }) => label + " " + value).join(", "));
    put("copied", "");
    document.body.dataset.tried = tried += 1;
  };

  byId("as-written").addEventListener("click", () => { chosen.clear(); ask(); });
  byId("copy").addEventListener("click", async () => {
    byId("command").select();
    await navigator.clipboard.writeText(byId("command").value);
    put("copied", byId("command").dataset.copied);
  });
  // Another text of the spec may have other choices.
  new MutationObserver(ask).observe(document.body, { attributes: true, attributeFilter: ["data-number"] });
})();
