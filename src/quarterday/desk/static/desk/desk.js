// Keys for who works without a mouse, and no form is sent twice.
"use strict";

const typing = (target) => target.closest("input, select, textarea, [contenteditable]");
const rows = () => [...document.querySelectorAll(".list tbody th a, .finding > summary, .entry > summary")]
  .filter((one) => one.offsetParent);

const move = (by) => {
  const all = rows();
  if (!all.length) return;
  const now = all.findIndex((one) => one === document.activeElement);
  const next = all[Math.min(Math.max(now + by, 0), all.length - 1)];
  next.focus();
  next.scrollIntoView({ block: "nearest" });
};

document.addEventListener("keydown", (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey || typing(event.target)) return;
  const act = {
    j: () => move(1),
    k: () => move(-1),
    "/": () => document.querySelector("#q")?.focus(),
    n: () => document.querySelector("a[rel=next]")?.click(),
    p: () => document.querySelector("a[rel=prev]")?.click(),
  }[event.key];
  if (act) {
    event.preventDefault();
    act();
  }
});

// what an address points to is unfolded, also where the browser does not do it by itself
const unfold = () => {
  const there = document.getElementById(location.hash.slice(1));
  for (let one = there?.closest("details"); one; one = one.parentElement.closest("details")) one.open = true;
  there?.closest(".finding")?.querySelector("summary").focus();
};
addEventListener("hashchange", unfold);
addEventListener("DOMContentLoaded", unfold);

// a button that was pressed once is not pressed twice
document.addEventListener("submit", (event) => {
  if (event.target.method !== "post") return;
  if (event.target.dataset.sent) {
    event.preventDefault();
    return;
  }
  event.target.dataset.sent = "yes";
});
window.addEventListener("pageshow", () => {
  for (const form of document.querySelectorAll("form[data-sent]")) delete form.dataset.sent;
});
