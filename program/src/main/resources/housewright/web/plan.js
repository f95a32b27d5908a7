// What a hand does on the floor plan: moves a place, draws a pathway, measures, points where a new place is. It fills
// the forms beside the plan and sends them; each of them works without it.

import { sheet, choose, STILL } from "./drawing.js";

const FOOT = 0.3048;
const INCH = 0.0254;
const NEAR = 24; // pixels from a place within which it is meant
let tool = "look";
let lead = false;
let held = null; // the place in hand: its group, where it was and where it would be
let points = []; // of what is being measured or drawn
let from = null;

const plan = () => document.getElementById("plan");
const us = () => plan().dataset.us === "yes";

function metres(at) {
    const { perMetre, originX, originY } = plan().dataset;
    return { x: (at.x - originX) / perMetre, y: (originY - at.y) / perMetre };
}

function units(at) {
    const { perMetre, originX, originY } = plan().dataset;
    return { x: Number(originX) + at.x * perMetre, y: Number(originY) - at.y * perMetre };
}

function snapped(at) {
    const step = us() ? 2 * INCH : 0.05;
    return { x: Math.round(at.x / step) * step, y: Math.round(at.y / step) * step };
}

/** As a field has it. */
function typed(length) {
    return us() ? `${Number((length / FOOT).toFixed(3))} ft` : `${Number(length.toFixed(3))} m`;
}

/** As it is read. */
function said(length) {
    if (!us()) return `${length.toFixed(2)} m`;
    const inches = Math.round(Math.abs(length) / INCH);
    return `${length < 0 && inches > 0 ? "−" : ""}${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

/** The place that a pointer means; null where none is near. */
function placeAt(event) {
    let best = null;
    let least = NEAR;
    for (const group of sheet.svg.querySelectorAll("[data-x][data-subject]")) {
        const at = units({ x: Number(group.dataset.x), y: Number(group.dataset.y) });
        const seen = new DOMPoint(at.x, at.y).matrixTransform(sheet.svg.getScreenCTM());
        const far = Math.hypot(seen.x - event.clientX, seen.y - event.clientY);
        if (far < least) { least = far; best = group; }
    }
    return best;
}

function placed(group) {
    return { id: group.dataset.subject.slice("place:".length), x: Number(group.dataset.x), y: Number(group.dataset.y), z: Number(group.dataset.z) };
}

function hold(group) {
    const { x, y } = placed(group);
    held = { group, id: placed(group).id, was: { x, y }, at: { x, y } };
    tellHeld();
}

/** A drawing on which a hand is busy is not drawn anew because somebody else changed something; it is when it lets go. */
function tellHeld() {
    const drawing = document.getElementById("drawing");
    if (drawing === null) return;
    if (held !== null || from !== null || points.length === 1) drawing.dataset.held = "yes";
    else if (drawing.dataset.held) {
        delete drawing.dataset.held;
        document.dispatchEvent(new CustomEvent("let-go"));
    }
}

/** Shows where the place in hand would be. */
function carry(at) {
    held.at = at;
    const { perMetre } = plan().dataset;
    const dx = (at.x - held.was.x) * perMetre;
    const dy = -(at.y - held.was.y) * perMetre;
    held.group.setAttribute("transform", `translate(${dx.toFixed(2)} ${dy.toFixed(2)})`);
    const layer = sheet.overlay();
    const a = units(held.was);
    const b = units(at);
    sheet.draw(layer, "path", { d: `M${a.x} ${a.y}L${b.x} ${b.y}`, "stroke-width": 1 / sheet.scale(), "stroke-dasharray": 4 / sheet.scale() });
    const far = Math.hypot(at.x - held.was.x, at.y - held.was.y);
    sheet.say(`${held.id}: x ${said(at.x)}, y ${said(at.y)}; moved ${said(far)}.`);
    fill("move-x", typed(at.x));
    fill("move-y", typed(at.y));
}

function letGo() {
    if (!held) return;
    held.group.removeAttribute("transform");
    sheet.overlay();
    held = null;
    tellHeld();
}

function fill(id, value) {
    const field = document.getElementById(id);
    if (field) field.value = value;
}

/** Sends the form of the chosen place. */
async function put() {
    const { id, at, was } = held;
    if (at.x === was.x && at.y === was.y) { letGo(); return; }
    const form = document.getElementById("move");
    if (form === null || form.elements.namedItem("place").value !== id) await choose(`place:${id}`, false);
    const ready = document.getElementById("move");
    if (ready === null) { letGo(); return; }
    // a coordinate that stays keeps the words it had
    if (at.x !== was.x) fill("move-x", typed(at.x));
    if (at.y !== was.y) fill("move-y", typed(at.y));
    held = null;
    delete document.getElementById("drawing").dataset.held; // the answer brings what others have changed
    ready.requestSubmit();
}

const moving = {
    down(event) {
        const group = placeAt(event);
        if (!group) return false;
        hold(group);
        this.grip = sheet.at(event);
        choose(group.dataset.subject, false);
        return true;
    },
    move(event) {
        if (!held) return;
        const at = sheet.at(event);
        const { perMetre } = plan().dataset;
        carry(snapped({ x: held.was.x + (at.x - this.grip.x) / perMetre, y: held.was.y - (at.y - this.grip.y) / perMetre }));
    },
    up(event) {
        if (event.type === "pointercancel") letGo();
        else if (held) put();
    },
    key(event) {
        const chosen = sheet.svg.querySelector("[data-x].chosen");
        if (held && event.key === "Escape") { letGo(); sheet.say("Left where it was."); return true; }
        if (held && event.key === "Enter") { put(); return true; }
        const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
        if (!way || !chosen) return false;
        if (!held || held.group !== chosen) { letGo(); hold(chosen); }
        const step = us() ? (event.shiftKey ? 3 * FOOT : 4 * INCH) : event.shiftKey ? 1 : 0.1;
        carry({ x: held.at.x + way[0] * step, y: held.at.y + way[1] * step });
        sheet.say(`${document.getElementById("drawing-says").textContent} Enter puts it there, Escape leaves it.`);
        return true;
    },
    click() { return true; },
};

function line(open) {
    tellHeld();
    const all = open ? [...points, open] : points;
    const layer = sheet.overlay();
    if (all.length === 0) return 0;
    const path = all.map((each, i) => { const at = units(each); return `${i ? "L" : "M"}${at.x.toFixed(2)} ${at.y.toFixed(2)}`; }).join("");
    const scale = sheet.scale();
    sheet.draw(layer, "path", { d: path, "stroke-width": 2 / scale });
    for (const each of all) { const at = units(each); sheet.draw(layer, "circle", { cx: at.x, cy: at.y, r: 4 / scale, "stroke-width": 1.5 / scale }); }
    const length = lengthOf(all);
    const last = units(all.at(-1));
    if (all.length > 1) sheet.draw(layer, "text", { x: last.x + 10 / scale, y: last.y - 10 / scale, "font-size": 15 / scale, fill: "currentColor", stroke: "none" }, said(length));
    return length;
}

const bends = (count) => (count === 0 ? "no bend" : count === 1 ? "one bend" : `${count} bends`);

function lengthOf(all) {
    let sum = 0;
    for (let i = 1; i < all.length; i++) sum += Math.hypot(all[i].x - all[i - 1].x, all[i].y - all[i - 1].y);
    return sum;
}

/** A place where one is near, else the point itself. */
function pointAt(event) {
    const group = placeAt(event);
    return group ? placed(group) : metres(sheet.at(event));
}

const measuring = {
    /** A mouse measures by dragging, too; a finger that drags moves the plan. */
    down(event) {
        this.begin = event.pointerType === "touch" ? null : { at: pointAt(event), x: event.clientX, y: event.clientY, dragged: false };
        return this.begin !== null;
    },
    move(event) {
        const { begin } = this;
        if (!begin.dragged && Math.hypot(event.clientX - begin.x, event.clientY - begin.y) < STILL) return false;
        begin.dragged = true;
        points = [begin.at];
        sheet.say(`${said(line(pointAt(event)))} on the plan.`);
        return true;
    },
    up(event) {
        if (!this.begin?.dragged) return;
        points = event.type === "pointercancel" ? [] : [this.begin.at, pointAt(event)];
        const length = line();
        sheet.say(points.length === 0 ? HINTS.measure : `${said(length)} on the plan, heights left out.`);
    },
    over(event) { if (points.length === 1) sheet.say(`${said(line(pointAt(event)))} on the plan.`); },
    click(event) {
        if (points.length === 2) points = [];
        points.push(pointAt(event));
        const length = line();
        sheet.say(points.length === 1 ? "From here; choose the other point." : `${said(length)} on the plan, heights left out.`);
        return true;
    },
    key: giveUp,
};

const drawing = {
    down() { return false; },
    over(event) { if (from) sheet.say(`From ${from.id}: ${said(line(pointAt(event)))} along the plan. Choose bends, then the place where it ends.`); },
    click(event) {
        const group = placeAt(event);
        if (!from) {
            if (!group) { sheet.say("A pathway begins at a place: choose one, or add one with New place."); return true; }
            from = placed(group);
            points = [from];
            line();
            sheet.say(`From ${from.id}. Choose bends, then the place where it ends.`);
            return true;
        }
        if (!group || placed(group).id === from.id) { points.push(metres(sheet.at(event))); line(); return true; }
        const to = placed(group);
        points.push(to);
        const along = line();
        fill("pathway-from", from.id);
        fill("pathway-to", to.id);
        fill("pathway-along", along.toFixed(3));
        fill("pathway-bends", String(points.length - 2));
        const details = document.getElementById("new-pathway");
        details.open = true;
        document.getElementById("pathway-says").textContent = `From ${from.id} to ${to.id}: ${said(along)} on the plan with ${bends(points.length - 2)}; the rises are added, and it is marked as measured on the plan.`;
        sheet.say(`${said(along)} from ${from.id} to ${to.id}. Say its kind, and add it.`);
        from = null;
        points = [];
        tellHeld();
        document.getElementById("pathway-kind").focus();
        return true;
    },
    key: giveUp,
};

const adding = {
    down() { return false; },
    click(event) {
        const at = snapped(metres(sheet.at(event)));
        points = [at];
        line();
        fill("place-x", typed(at.x));
        fill("place-y", typed(at.y));
        document.getElementById("new-place").open = true;
        sheet.say(`At x ${said(at.x)}, y ${said(at.y)}. Give it an id and a height.`);
        document.getElementById("place-id").focus();
        return true;
    },
    key: giveUp,
};

function giveUp(event) {
    if (event.key !== "Escape" || points.length === 0) return false;
    points = [];
    from = null;
    tellHeld();
    sheet.overlay();
    sheet.say("");
    return true;
}

const TOOLS = { look: null, measure: measuring, move: moving, pathway: drawing, place: adding };
const HINTS = {
    look: "",
    measure: "Choose two points, or drag from one to the other.",
    move: "Drag a place; or choose one and press the arrow keys, with Shift for longer steps.",
    pathway: "Choose the place where it begins.",
    place: "Choose where the new place is.",
};

function take(name) {
    tool = name;
    points = [];
    from = null;
    letGo();
    tellHeld();
    sheet.overlay();
    sheet.give(TOOLS[name]);
    for (const each of document.querySelectorAll("[data-hand]")) each.setAttribute("aria-pressed", String(each.dataset.hand === name));
    sheet.say(HINTS[name]);
}

// What was measured by hand holds for the two places it was measured between.
document.addEventListener("change", (event) => {
    if (event.target instanceof Element && event.target.matches("#pathway-from, #pathway-to")) fill("pathway-along", "");
});

document.addEventListener("click", (event) => {
    const button = event.target instanceof Element ? event.target.closest("[data-hand]") : null;
    if (!button) return;
    take(button.dataset.hand);
    sheet.box.focus();
});

sheet.whenSetUp(() => {
    const here = plan();
    held = null;
    if (here === null) { sheet.give(null); return; }
    lead = here.dataset.edits === "yes";
    const possible = here.dataset.plan === "yes" && (lead || tool === "measure" || tool === "look");
    const says = document.getElementById("drawing-says").textContent;
    take(possible ? tool : "look");
    if (says) sheet.say(says);
});
