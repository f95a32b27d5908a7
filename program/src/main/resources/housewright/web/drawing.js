// Drawings in a page: moved and zoomed by pointer, touch, wheel, keys and buttons, by setting the viewBox; a thing that
// is chosen, in the drawing or in a list beside it, is marked in both and told of beside it.

const SVG = "http://www.w3.org/2000/svg";
const CLOSEST = 40; // the least part of a sheet that fills the view is one in so many
const STEP = 1.25;
const PAD = 40; // units around what is shown
const READABLE = 0.75; // of the size on paper, where the smallest words are 9 pixels high
export const STILL = 4; // a pointer that moves less than this many pixels has not dragged

const views = new Map(); // by drawing, so that an edit leaves the view as it is
const setUp = new Set(); // what other modules do with a drawing that has come
const pointers = new Map();
let box = null;
let svg = null;
let full = null;
let view = null;
let hand = null; // a tool that takes the pointer in place of moving the drawing
let dragged = false;
let before = null;

export const sheet = {
    get svg() { return svg; },
    get box() { return box; },
    /** Where a pointer is, in units of the sheet. */
    at(event) {
        const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
        return { x: at.x, y: at.y };
    },
    /** Pixels of the screen to a unit of the sheet. */
    scale() { return svg.getScreenCTM().a; },
    /**
     * @param tool with down, move and up, each given the event; down answers whether it takes the pointer, move false
     * while it is no drag yet
     */
    give(tool) { hand = tool; },
    whenSetUp(work) { setUp.add(work); if (svg) work(); },
    choose,
    say(words) { const line = document.getElementById("drawing-says"); if (line) line.textContent = words; },
    /** A layer of its own over the drawing, empty. */
    overlay() {
        svg.querySelector(":scope > .overlay")?.remove();
        const layer = document.createElementNS(SVG, "g");
        layer.setAttribute("class", "overlay");
        svg.append(layer);
        return layer;
    },
    draw(layer, tag, attributes, text) {
        const node = document.createElementNS(SVG, tag);
        for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
        if (text) node.textContent = text;
        layer.append(node);
        return node;
    },
};

function start() {
    const found = document.getElementById("drawing-box");
    if (found === null) { box = svg = null; return; }
    if (found !== box) {
        box = found;
        pointers.clear();
        box.addEventListener("wheel", wheel, { passive: false });
        box.addEventListener("pointerdown", down);
        box.addEventListener("pointermove", move);
        box.addEventListener("pointerup", up);
        box.addEventListener("pointercancel", up);
        box.addEventListener("click", click, true);
        box.addEventListener("keydown", key);
    }
    const drawn = box.querySelector("svg.sheet");
    if (drawn === svg) return;
    svg = drawn;
    full = split(svg.getAttribute("viewBox"));
    const known = views.get(box.dataset.key);
    if (known && same(known.full, full)) show(known.view);
    else show(opening());
    mark(box.dataset.chosen);
    for (const work of setUp) work();
}

function split(text) {
    const [x, y, w, h] = text.split(" ").map(Number);
    return { x, y, w, h };
}

function same(one, other) {
    return one.w === other.w && one.h === other.h;
}

/**
 * All that is drawn, as far as it can be read. Of a large sheet of signal the part where the chosen thing is, or where the
 * lit feed stops, or where that is, or else where the signal begins; a plan is seen whole.
 */
function opening() {
    const rect = box.getBoundingClientRect();
    const all = drawn();
    const scale = Math.min(rect.width / all.w, rect.height / all.h);
    if (scale > READABLE || box.dataset.page !== "signal") return unlessLarger(all);
    const w = rect.width / READABLE;
    const h = rect.height / READABLE;
    const chosen = box.dataset.chosen ? around([...svg.querySelectorAll(`[data-subject="${CSS.escape(box.dataset.chosen)}"]`)]) : null;
    const asked = chosen ?? around([...svg.querySelectorAll(".gap")]);
    if (asked !== null) return { x: asked.x + asked.w / 2 - w / 2, y: asked.y + asked.h / 2 - h / 2, w, h };
    const parts = [...svg.querySelectorAll(".lit")];
    const lit = around(parts);
    if (lit === null) return { x: all.x, y: all.y, w, h };
    if (lit.w <= w && lit.h <= h) return unlessLarger(lit);
    // of what is too large to be read as a whole, where it begins
    const left = (part) => part.getBoundingClientRect().left;
    const first = around([parts.reduce((one, other) => (left(other) < left(one) ? other : one))]);
    return { x: lit.x, y: lit.h <= h ? lit.y + lit.h / 2 - h / 2 : first.y + first.h / 2 - h / 2, w, h };
}

/** What is drawn, without the paper around it; with its notes, where these would be in sight in part. */
function drawn() {
    const all = around([...svg.querySelectorAll("[data-subject], .beside")]);
    if (all === null) return full;
    const rect = box.getBoundingClientRect();
    const notes = around([...svg.querySelectorAll(".notes")]);
    const spare = Math.max(0, (all.w * rect.height) / rect.width - all.h) / 2; // in sight below, since the view is higher
    if (notes === null || notes.y + PAD > all.y + all.h + spare) return all;
    const x = Math.min(all.x, notes.x);
    const right = Math.max(all.x + all.w, notes.x + notes.w);
    return { x, y: all.y, w: right - x, h: Math.max(all.h, notes.y + notes.h - all.y) };
}

/** Not larger than on paper. */
function unlessLarger(area) {
    const w = Math.max(area.w, box.getBoundingClientRect().width);
    return { x: area.x - (w - area.w) / 2, y: area.y, w, h: area.h };
}

function around(nodes) {
    const inverse = svg.getScreenCTM().inverse();
    let left = Infinity, top = Infinity, right = -Infinity, bottom = -Infinity;
    for (const node of nodes) {
        const area = node.getBoundingClientRect();
        const a = new DOMPoint(area.left, area.top).matrixTransform(inverse);
        const b = new DOMPoint(area.right, area.bottom).matrixTransform(inverse);
        left = Math.min(left, a.x); top = Math.min(top, a.y);
        right = Math.max(right, b.x); bottom = Math.max(bottom, b.y);
    }
    if (!(right >= left)) return null;
    return { x: left - PAD, y: top - PAD, w: right - left + 2 * PAD, h: bottom - top + 2 * PAD };
}

function show(wanted) {
    const w = Math.min(Math.max(wanted.w, full.w / CLOSEST), full.w * 1.5);
    const h = (w / wanted.w) * wanted.h;
    // some of the sheet stays in sight
    const x = Math.min(Math.max(wanted.x, full.x - w * 0.9), full.x + full.w - w * 0.1);
    const y = Math.min(Math.max(wanted.y, full.y - h * 0.9), full.y + full.h - h * 0.1);
    view = { x, y, w, h };
    svg.setAttribute("viewBox", [x, y, w, h].map((each) => each.toFixed(2)).join(" "));
    views.set(box.dataset.key, { full, view });
}

function zoom(factor, at) {
    const middle = at ?? { x: view.x + view.w / 2, y: view.y + view.h / 2 };
    const w = view.w / factor;
    const limited = Math.min(Math.max(w, full.w / CLOSEST), full.w * 1.5);
    const by = limited / view.w;
    show({ x: middle.x - (middle.x - view.x) * by, y: middle.y - (middle.y - view.y) * by, w: view.w * by, h: view.h * by });
}

function pan(dx, dy) {
    show({ ...view, x: view.x + dx, y: view.y + dy });
}

function fit() {
    show(unlessLarger(drawn()));
}

function wheel(event) {
    event.preventDefault();
    const lines = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY;
    zoom(Math.exp(-lines * (event.ctrlKey ? 0.01 : 0.0015)), sheet.at(event));
}

function down(event) {
    if (event.button !== 0) return;
    if (pointers.size === 0) {
        dragged = false;
        if (hand?.down(event)) { before = "hand"; box.setPointerCapture(event.pointerId); return; }
    }
    before = null;
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY, fromX: event.clientX, fromY: event.clientY });
}

function move(event) {
    if (before === "hand") { if (hand?.move(event) !== false) dragged = true; return; }
    hand?.over?.(event);
    const pointer = pointers.get(event.pointerId);
    if (!pointer) return;
    if (pointers.size === 1) {
        if (!dragged && Math.hypot(event.clientX - pointer.fromX, event.clientY - pointer.fromY) < STILL) return;
        if (!dragged) { dragged = true; box.setPointerCapture(event.pointerId); box.classList.add("dragged"); }
        const scale = sheet.scale();
        pan((pointer.x - event.clientX) / scale, (pointer.y - event.clientY) / scale);
    } else if (pointers.size === 2) {
        dragged = true;
        const other = [...pointers].find(([id]) => id !== event.pointerId)[1];
        const was = Math.hypot(pointer.x - other.x, pointer.y - other.y);
        const is = Math.hypot(event.clientX - other.x, event.clientY - other.y);
        const middle = { clientX: (event.clientX + other.x) / 2, clientY: (event.clientY + other.y) / 2 };
        const scale = sheet.scale();
        pan((pointer.x - event.clientX) / 2 / scale, (pointer.y - event.clientY) / 2 / scale);
        if (was > 0) zoom(is / was, sheet.at(middle));
    }
    pointer.x = event.clientX;
    pointer.y = event.clientY;
}

function up(event) {
    if (before === "hand") { before = null; hand?.up(event); return; }
    pointers.delete(event.pointerId);
    if (pointers.size === 0) box.classList.remove("dragged");
}

function click(event) {
    if (dragged) { dragged = false; event.stopPropagation(); return; }
    if (hand?.click?.(event)) return;
    const thing = event.target.closest?.("[data-subject]");
    if (thing) choose(thing.dataset.subject, false);
}

function key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target !== box) return;
    if (hand?.key?.(event)) { event.preventDefault(); return; }
    const step = view.w / 10;
    const does = {
        "+": () => zoom(STEP), "=": () => zoom(STEP), "-": () => zoom(1 / STEP), "0": fit,
        ArrowLeft: () => pan(-step, 0), ArrowRight: () => pan(step, 0), ArrowUp: () => pan(0, -step), ArrowDown: () => pan(0, step),
    }[event.key];
    if (!does) return;
    event.preventDefault();
    does();
}

function mark(subject) {
    box.dataset.chosen = subject ?? "";
    for (const each of svg.querySelectorAll(".chosen")) each.classList.remove("chosen");
    for (const each of document.querySelectorAll("[data-choose]")) {
        if (each.dataset.choose === subject) each.setAttribute("aria-current", "true");
        else each.removeAttribute("aria-current");
    }
    if (!subject) return [];
    const nodes = [...svg.querySelectorAll(`[data-subject="${CSS.escape(subject)}"]`)];
    for (const each of nodes) each.classList.add("chosen");
    return nodes;
}

/** @param bring whether the drawing is moved so that it is seen */
export async function choose(subject, bring) {
    const nodes = mark(subject);
    if (bring && nodes.length > 0) bringIn(nodes);
    const address = new URL(location.href);
    address.searchParams.set("thing", subject);
    history.replaceState(history.state, "", address);
    const answer = await fetch(`${box.dataset.thing}?thing=${encodeURIComponent(subject)}&page=${box.dataset.page}`);
    const beside = document.getElementById("beside");
    if (!answer.ok || beside === null || box.dataset.chosen !== subject) return;
    beside.innerHTML = await answer.text();
    window.htmx?.process(beside);
    document.dispatchEvent(new CustomEvent("chosen", { detail: subject }));
}

function bringIn(nodes) {
    const area = around(nodes);
    const inside = area.x >= view.x && area.y >= view.y && area.x + area.w <= view.x + view.w && area.y + area.h <= view.y + view.h;
    if (inside && area.w > view.w / 12) return;
    const w = Math.max(area.w, Math.min(view.w, full.w / 3));
    const h = w * (view.h / view.w);
    const middle = { x: area.x + area.w / 2, y: area.y + area.h / 2 };
    show({ x: middle.x - w / 2, y: middle.y - h / 2, w, h });
}

document.addEventListener("click", (event) => {
    if (!(event.target instanceof Element) || box === null) return;
    const zooms = event.target.closest("[data-zoom]");
    if (zooms) ({ in: () => zoom(STEP), out: () => zoom(1 / STEP), fit })[zooms.dataset.zoom]();
    if (event.target.closest("[data-print]")) window.print();
    const chooses = event.target.closest("[data-choose]");
    if (chooses && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
        event.preventDefault();
        choose(chooses.dataset.choose, true);
    }
});

// What a form sends back to is the page as it is now, with what has been chosen since it came.
document.addEventListener("submit", (event) => {
    const back = event.target.closest?.("main") ? event.target.elements.namedItem("back") : null;
    if (back) back.value = location.pathname + location.search;
}, true);

window.addEventListener("beforeprint", () => { if (svg) svg.setAttribute("viewBox", [full.x, full.y, full.w, full.h].join(" ")); });
window.addEventListener("afterprint", () => { if (svg) show(view); });
document.addEventListener("refreshed", start);
document.addEventListener("htmx:afterSettle", start);
start();
