"use strict";
// A size is chosen: its numbers stand in the sentences, and what is not for it goes. The choice is kept in the reader's own
// browser. The page as it came is kept beside, so that another size needs no request.
(() => {
  const page = document.documentElement;
  const came = document.body.cloneNode(true);
  const work = page.dataset.work;
  const sizeKey = "furbelow.size." + work;
  const recall = () => {
    try { return localStorage.getItem(sizeKey); } catch { return null; }
  };
  const keep = (value) => {
    try { localStorage.setItem(sizeKey, value); } catch { /* a page that may not store still works, without memory */ }
  };

  const unversioned = (text) => text.replace(/~c?[0-9]+/g, "");
  const cut_to = (size) => {
    const { numbers, done, named, chosen, briefs } = document.getElementById("choose").dataset;
    const isHers = (each) => each.dataset.for.split(" ").includes(size);
    for (const each of document.querySelectorAll("[data-for]")) {
      if (!isHers(each)) (each.closest(".sentence") && each.closest(".step") || each).remove();
    }
    for (const each of document.querySelectorAll(".version, .every")) each.remove();
    for (const each of document.querySelectorAll(".stop")) if (!each.textContent.trim()) each.remove();
    // Of the ways to cut one is left: its work stands where that of a guide stands.
    for (const each of document.querySelectorAll(".way")) each.replaceWith(...each.childNodes);
    for (const each of document.querySelectorAll("[data-number]")) {
      const number = JSON.parse(numbers)[each.dataset.number][size];
      const step = each.closest(".step");
      if (step) step.dataset.said += "." + number;
      each.className = "filled";
      each.textContent = number;
    }
    // Of several versions one is left, and is called as in the booklet.
    for (const name of ["id", "value", "aria-labelledby", "for"]) {
      for (const each of document.querySelectorAll(`main [${name}*="~"]`)) each.setAttribute(name, unversioned(each.getAttribute(name)));
    }
    for (const name of new Set([...document.querySelectorAll("template")].map((each) => each.dataset.figure))) {
      const figure = document.getElementById(name);
      if (!figure) continue;
      const own = document.querySelector(`template[data-figure="${name}"][data-size="${size}"]`);
      if (!own) {
        figure.remove();
        continue;
      }
      const sheet = figure.querySelector(".sheet");
      sheet.replaceChildren(own.content.cloneNode(true));
      sheet.setAttribute("aria-label", own.dataset.alt);
      const caption = figure.querySelector("figcaption");
      if (caption) caption.textContent = own.dataset.caption;
    }
    // The size chart stays whole: who looks there asks whether the choice was right.
    for (const each of document.querySelectorAll("[data-column]")) {
      if (each.dataset.column === size) each.classList.add("hers");
      else if (!each.closest(".measures")) each.remove();
    }
    const brief = document.getElementById("brief");
    brief.textContent = JSON.parse(briefs)[size];
    brief.hidden = !brief.textContent;
    const told = JSON.parse(done)[size];
    document.getElementById("bar").dataset.done = JSON.stringify(told);
    document.getElementById("far").max = told.length - 1;
    document.querySelector(".head .for").textContent = JSON.parse(named)[size];
    document.getElementById("chosen").textContent = JSON.parse(chosen)[size];
  };

  const show = (size) => {
    document.body.replaceWith(came.cloneNode(true));
    delete page.dataset.view;
    const choose = document.getElementById("choose");
    const buttons = [...choose.querySelectorAll("button")];
    if (!buttons.some((button) => button.value === size)) size = "";
    page.dataset.work = size === "" ? work : `${work}.${buttons.findIndex((button) => button.value === size)}`;
    if (size === "") {
      // Who has not chosen reads as on paper: nothing to tick, for which size would it be?
      for (const box of document.querySelectorAll(".step input")) box.replaceWith(Object.assign(document.createElement("span"), { className: "square" }));
      document.getElementById("single").remove();
    } else cut_to(size);
    for (const button of buttons) {
      button.setAttribute("aria-pressed", String(button.value === size));
      button.addEventListener("click", () => {
        keep(button.value);
        show(button.value);
        document.querySelector(`#choose button[value="${button.value}"]`).focus();
      });
    }
    choose.hidden = false;
    guide();
  };
  show(recall() || "");
})();
