// The editing tables: keys as in a spreadsheet, one editor that is moved from cell to cell, and every edit sent at once.
// The server answers with the rows as they are then; nothing is reckoned here.

import { choose } from "./choices.js";

const PLAIN = 1;
const NEW = "New"; // what an empty id of the row for a new one says
let grid;
let box;
let beside;
let editor = null; // { cell, input, was, list }
let stale = false; // what others have changed was not shown, since somebody typed there

export function start() {
    grid = document.getElementById("grid");
    if (grid === null || grid.dataset.ready) return;
    grid.dataset.ready = "yes";
    box = document.getElementById("grid-box");
    beside = document.getElementById("beside");
    editor = null;
    grid.addEventListener("keydown", onKey);
    grid.addEventListener("mousedown", onPress);
    grid.addEventListener("dblclick", (event) => edit(cellOf(event.target)));
    grid.addEventListener("click", onClick);
    grid.addEventListener("change", (event) => event.target.type === "checkbox" && mark(event.target));
    grid.addEventListener("focusin", (event) => keep(cellOf(event.target)));
    grid.addEventListener("copy", onCopy);
    grid.addEventListener("paste", onPaste);
    beside.addEventListener("click", onBesideClick);
    beside.addEventListener("submit", onBesideSubmit);
    beside.addEventListener("change", onBesideChange);
    beside.addEventListener("focusin", onBesideFocus);
    document.querySelector(".sheet").addEventListener("click", onTool);
    const filter = document.getElementById("filter");
    filter.addEventListener("input", soon(() => reload(0), 150));
    if (filter.value.trim() !== grid.dataset.words) reload(0); // typed before this listened
    document.getElementById("find").addEventListener("submit", (event) => {
        event.preventDefault();
        event.stopPropagation();
        reload(0);
    });
    const scrolled = getComputedStyle(box).overflowY === "visible" ? window : box;
    scrolled.addEventListener("scroll", more, { passive: true });
    scrolled.addEventListener("scroll", soon(() => isBehind() && refresh(), 150), { passive: true });
    const first = rows()[0]?.cells[0] ?? grid.tFoot?.rows[0]?.cells[1];
    if (first) first.tabIndex = 0;
    counts();
    toHash();
    const begin = new URLSearchParams(location.search).get("begin");
    if (begin) {
        history.replaceState(null, "", location.pathname); // once, not on each reload
        document.querySelector(begin === "paste" ? "[data-paste]" : "[data-new]")?.click();
    }
}

/* Cells */

const rows = () => [...grid.tBodies[0].rows].filter((row) => row.dataset.row !== undefined);
const cellOf = (target) => (target instanceof Element ? target.closest("#grid tbody :is(td, th), #grid tfoot :is(td, th)") : null);
const text = (cell) => cell.dataset.typed ?? (isNewId(cell) ? "" : (cell.querySelector(".t")?.textContent ?? ""));
const rowId = (cell) => cell.parentElement.dataset.row;
const isNew = (cell) => cell.parentElement.classList.contains("new");
const isNewId = (cell) => cell.dataset.column === "id" && isNew(cell); // shows "New" until an id is typed
const mayEdit = (cell) =>
    grid.dataset.edits === "yes" && cell.dataset.column !== "" && !cell.classList.contains("derived") && !cell.closest(".clash-row");
const shown = (cell) => cell.offsetParent !== null;

function keep(cell) {
    if (cell === null) return;
    for (const each of grid.querySelectorAll("[tabindex='0']")) if (each !== cell) each.tabIndex = -1;
    cell.tabIndex = 0;
}

function go(cell) {
    if (!cell) return false;
    keep(cell);
    cell.focus({ preventScroll: true });
    cell.scrollIntoView({ block: "nearest", inline: "nearest" });
    return true;
}

function lines() {
    return [...grid.querySelectorAll("tbody tr[data-row], tfoot tr")];
}

function beyond(cell, down) {
    const all = lines();
    const at = all.indexOf(cell.parentElement) + down;
    const row = all[Math.max(0, Math.min(all.length - 1, at))];
    return row?.cells[cell.cellIndex];
}

function across(cell, step) {
    let next = cell;
    do {
        next = step > 0 ? next.nextElementSibling : next.previousElementSibling;
    } while (next !== null && !shown(next));
    return next;
}

function along(cell, step) {
    const next = across(cell, step);
    if (next) return next;
    const all = lines();
    const row = all[all.indexOf(cell.parentElement) + step];
    return row ? (step > 0 ? row.cells[0] : [...row.cells].filter(shown).at(-1)) : null;
}

function onKey(event) {
    const cell = cellOf(event.target);
    if (cell === null) return;
    if (editor !== null && editor.cell === cell) return onEditKey(event);
    if (event.target !== cell && event.key !== "Escape" && !event.key.startsWith("Arrow")) return;
    const command = event.ctrlKey || event.metaKey;
    const page = Math.max(1, Math.floor(box.clientHeight / (cell.offsetHeight || 28)) - 2);
    const moves = {
        ArrowDown: () => beyond(cell, command ? Infinity : 1),
        ArrowUp: () => beyond(cell, command ? -Infinity : -1),
        ArrowRight: () => across(cell, 1),
        ArrowLeft: () => across(cell, -1),
        PageDown: () => beyond(cell, page),
        PageUp: () => beyond(cell, -page),
        Home: () => (command ? lines()[0]?.cells[0] : cell.parentElement.cells[0]),
        End: () => (command ? lines().at(-1)?.cells[0] : [...cell.parentElement.cells].filter(shown).at(-1)),
    };
    if (moves[event.key]) {
        event.preventDefault();
        go(moves[event.key]() ?? cell);
    } else if (event.key === "Tab" && !command) {
        const next = along(cell, event.shiftKey ? -1 : 1);
        if (next) {
            event.preventDefault();
            go(next);
        }
    } else if (event.key === "Escape") {
        event.preventDefault();
        document.getElementById("filter").focus();
    } else if (event.key === "Enter" && command) {
        event.preventDefault();
        open(rowId(cell));
    } else if (event.key === "Enter" || event.key === "F2") {
        event.preventDefault();
        if (cell.querySelector("a, button") && !mayEdit(cell)) cell.querySelector("a, button").click();
        else edit(cell);
    } else if (event.key === " " && !command) {
        event.preventDefault();
        const mine = cell.parentElement.querySelector("input[type=checkbox]");
        if (mine) {
            mine.checked = !mine.checked;
            mark(mine);
        }
    } else if ((event.key === "Delete" || event.key === "Backspace") && mayEdit(cell) && cell.dataset.column !== "id") {
        event.preventDefault();
        send(cell, "");
    } else if (event.key.length === PLAIN && !command && !event.altKey && mayEdit(cell)) {
        event.preventDefault();
        edit(cell, event.key);
    }
}

function onPress(event) {
    const cell = cellOf(event.target);
    if (cell === null || event.target.closest("input, a, button")) return;
    if (editor !== null && editor.cell !== cell) commit();
    if (document.activeElement === cell && event.detail === 1 && mayEdit(cell)) {
        event.preventDefault();
        edit(cell);
    }
}

function onClick(event) {
    if (event.target.closest("[data-open]")) open(event.target.closest("tr").dataset.row);
    else if (event.target.closest("[data-nearest]")) {
        const error = event.target.closest(".error");
        send(cellOf(error), event.target.closest("[data-nearest]").dataset.nearest, true);
    } else if (event.target.closest("[data-mine]")) settle(event.target.closest(".clash-row"), true);
    else if (event.target.closest("[data-theirs]")) settle(event.target.closest(".clash-row"), false);
}

/* The editor */

function edit(cell, typed) {
    if (cell === null || !mayEdit(cell) || (editor !== null && editor.cell === cell)) return;
    if (editor !== null) commit();
    const input = document.createElement("input");
    input.className = "cell";
    input.type = "text";
    input.autocomplete = "off";
    input.spellcheck = false;
    input.setAttribute("aria-label", `${columnTitle(cell)} of ${rowId(cell) || "the new row"}`);
    input.value = typed ?? text(cell);
    cell.classList.add("editing");
    cell.append(input);
    editor = { cell, input, was: text(cell) };
    editor.list = choose(input, (words) => choicesFor(cell, words), () => {});
    input.addEventListener("blur", () => setTimeout(() => editor?.input === input && document.activeElement !== input && commit(), 0));
    input.focus({ preventScroll: true });
    if (typed === undefined) input.select();
    editor.list.look();
}

function columnTitle(cell) {
    return cell.dataset.column === "id" ? "Id" : (grid.tHead.rows[0].cells[cell.cellIndex]?.textContent ?? cell.dataset.column);
}

async function choicesFor(cell, words) {
    if (cell.dataset.column === "id") return "";
    const device = isNew(cell) ? pending(cell.parentElement)["device"] ?? "" : rowId(cell);
    const query = new URLSearchParams({ row: device, column: cell.dataset.column, text: words });
    const answer = await fetch(`${grid.dataset.href}/choices?${query}`);
    return answer.ok ? answer.text() : "";
}

function onEditKey(event) {
    const { cell } = editor;
    if (editor.list.key(event)) return;
    if (event.key === "Enter") {
        event.preventDefault();
        commit();
        if (!isNew(cell)) go(beyond(cell, event.shiftKey ? -1 : 1));
    } else if (event.key === "Tab") {
        event.preventDefault();
        const next = along(cell, event.shiftKey ? -1 : 1);
        commit();
        go(next?.isConnected ? next : cell);
    } else if (event.key === "Escape") {
        event.preventDefault();
        event.stopPropagation();
        close();
        giveBack(cell);
        go(cell);
    }
}

function close() {
    if (editor === null) return null;
    const { cell, input, list } = editor;
    editor = null;
    list.close();
    const value = input.value;
    const focused = document.activeElement === input;
    input.remove();
    cell.classList.remove("editing");
    if (focused) go(cell);
    if (stale) setTimeout(refresh);
    return value;
}

function commit() {
    const { cell, was } = editor;
    const value = close().trim();
    if (value !== was || cell.hasAttribute("aria-invalid")) send(cell, value);
}

function forget(cell) {
    cell.removeAttribute("aria-invalid");
    cell.removeAttribute("aria-describedby");
    delete cell.dataset.typed;
    if (isNewId(cell)) cell.querySelector(".t").textContent = NEW;
    cell.querySelector(".error")?.remove();
}

/** Shows what the project holds again, in place of what was refused. */
function giveBack(cell) {
    const refused = cell.dataset.typed !== undefined && cell.hasAttribute("aria-invalid");
    forget(cell);
    if (!refused) return;
    if (!isNewId(cell)) cell.querySelector(".t").textContent = isNew(cell) ? "" : (cell.dataset.stood ?? "");
    delete cell.dataset.stood;
}

// Undo takes back what was typed last, before any step of the project: what was refused is no step yet.
document.addEventListener("undoing", (event) => {
    const refused = grid?.isConnected ? [...grid.querySelectorAll("[aria-invalid]")].filter((cell) => cell.dataset.typed !== undefined) : [];
    const own = cellOf(document.activeElement);
    const cell = refused.includes(own) ? own : refused.at(-1);
    if (!cell) return;
    event.preventDefault();
    giveBack(cell);
    go(cell);
    say("Given back what stood there; nothing was changed.");
});

/* Sending */

function rowsFor(cell) {
    const own = cell.parentElement;
    return own.classList.contains("chosen") && cell.dataset.column !== "id"
        ? rows().filter((row) => row.classList.contains("chosen"))
        : [own];
}

function pending(row) {
    const cells = {};
    for (const cell of row.cells) if (cell.dataset.column && cell.dataset.column !== "id" && text(cell)) cells[cell.dataset.column] = text(cell);
    return cells;
}

let queue = Promise.resolve();

/** One after the other: an edit is made on what the one before has left. */
function send(cell, value, refocus = false) {
    cell.dataset.stood ??= isNewId(cell) ? "" : (cell.querySelector(".t")?.textContent ?? "");
    forget(cell);
    const span = cell.querySelector(".t");
    cell.dataset.typed = value;
    span.textContent = value || (isNewId(cell) ? NEW : "");
    if (isNew(cell)) {
        queue = queue.then(() => sendNew(cell)).catch(failed);
        return;
    }
    cell.setAttribute("aria-busy", "true");
    const fields = { column: cell.dataset.column, text: value };
    const meant = rowsFor(cell); // whatever is chosen by the time it is sent
    queue = queue.then(async () => {
        const targets = meant.map(newest);
        const row = targets.map((each) => each.dataset.row);
        const base = Math.min(...targets.map((each) => Number(each.dataset.base)));
        const answer = await post("set", { ...fields, row, base });
        const here = now(cell);
        here.removeAttribute("aria-busy");
        take(answer, here);
        if (refocus) go(at(answer.dataset.was || row[0], fields.column) ?? at(row[0], fields.column));
    }).catch(failed);
}

const like = (row, column) => [...row.cells].find((cell) => cell.dataset.column === column);

function at(row, column) {
    const line = rows().find((each) => each.dataset.row === row);
    return line ? like(line, column) : null;
}

function newest(row) {
    let shown = row;
    while (shown.shownAs) shown = shown.shownAs;
    return shown;
}

/** Where a cell is now: its row may have been shown anew since somebody typed in it. */
function now(cell) {
    const row = newest(cell.parentElement);
    return row === cell.parentElement ? cell : (like(row, cell.dataset.column) ?? cell);
}

async function sendNew(cell) {
    const row = cell.parentElement;
    const cells = Object.fromEntries(Object.entries(pending(row)).map(([key, each]) => [`c-${key}`, each]));
    const id = text(row.cells[0]);
    if (id) cells.id = id;
    if (Object.keys(cells).length === 0) return;
    const answer = await post("add", cells);
    if (answer.dataset.state !== "accepted") {
        const typed = new Set(Object.keys(cells));
        const errors = [...answer.querySelectorAll(".error")];
        const own = errors.filter((error) => typed.has(`c-${error.dataset.column}`) || (id && ["id", ""].includes(error.dataset.column)));
        if (own.length === 0 && errors.length > 0) return say(`The new row also wants: ${errors.map((each) => each.dataset.column).join(", ")}.`);
        for (const error of own) error.dataset.row = "";
        return take(answer, cell);
    }
    const at = row.contains(document.activeElement) ? cellOf(document.activeElement) : null;
    const typing = editor !== null && row.contains(editor.cell) ? close() : null;
    const later = []; // what was typed while the answer was on its way belongs to the row that came of it
    for (const each of row.cells) {
        const typed = each.dataset.typed;
        if (typed && typed !== (isNewId(each) ? id : cells[`c-${each.dataset.column}`])) later.push([each.dataset.column, typed]);
        forget(each);
        if (each.dataset.column && !isNewId(each)) each.querySelector(".t").textContent = "";
    }
    const fresh = answer.querySelector("tbody tr");
    if (fresh) {
        grid.tBodies[0].append(fresh);
        grid.dataset.matching = String(Number(grid.dataset.matching) + 1);
        // whoever went on along the row fills the rest in; whoever stayed has the next one to add
        const on = at === null || at === cell ? at : like(fresh, at.dataset.column);
        if (on) go(on);
        if (on && typing !== null) edit(on, typing);
        for (const [column, typed] of later) send(like(fresh, column), typed);
    }
    told(answer);
}

/** @return the answer as an element */
async function post(path, fields) {
    const body = new URLSearchParams();
    for (const [name, value] of Object.entries(fields)) for (const each of [value].flat()) body.append(name, each);
    if (grid.dataset.all) body.append("all", "yes");
    return read(await fetch(path.startsWith("/") ? path : `${grid.dataset.href}/${path}`, {
        method: "POST",
        body,
        headers: { "X-Housewright-Token": document.body.dataset.token },
    }));
}

async function read(answer) {
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const part = page.querySelector("[data-state]");
    if (!answer.ok || part === null) throw new Error(page.querySelector("main p:not(:empty)")?.textContent ?? "The server did not answer as it should.");
    return document.adoptNode(part);
}

function failed(error) {
    say(error instanceof TypeError ? "The server cannot be reached; what was typed is kept here." : error.message, true);
    for (const cell of grid.querySelectorAll("[aria-busy]")) {
        cell.removeAttribute("aria-busy");
        cell.setAttribute("aria-invalid", "true");
    }
}

/** Puts what came of an edit of a cell in place. */
function take(answer, cell) {
    const state = answer.dataset.state;
    if (state === "accepted") {
        const rename = answer.dataset.was;
        delete cell.dataset.stood;
        for (const fresh of [...answer.querySelectorAll("tbody tr")]) replace(rename || fresh.dataset.row, fresh);
        told(answer);
    } else if (state === "conflict") {
        clash(answer, cell);
    } else if (state === "wrong") {
        say(answer.querySelector(".error .wrong")?.textContent ?? "", true); // before the words move to their cells
        for (const error of [...answer.querySelectorAll(".error")]) {
            const own = cell.dataset.column === error.dataset.column || error.dataset.column === "" ? cell : null;
            wrong(own ?? at(error.dataset.row, error.dataset.column) ?? cell, error);
        }
    } else {
        cell.setAttribute("aria-invalid", "true");
        say(answer.querySelector(".says").textContent, true);
    }
}

function wrong(cell, error) {
    if (cell.querySelector(".error")) return;
    error.id = `error-${cell.parentElement.id || "new"}-${cell.dataset.column}`.replace(/[^\w-]/g, "_");
    cell.setAttribute("aria-invalid", "true");
    cell.setAttribute("aria-describedby", error.id);
    cell.append(error);
}

function replace(id, fresh) {
    const old = rows().find((row) => row.dataset.row === id);
    if (!old) return;
    if (isTypedIn(old)) {
        old.dataset.base = fresh.dataset.base;
        stale = true;
        return;
    }
    renew(old, fresh, carry);
}

function renew(old, fresh, carried = carryOn) {
    const focused = old.contains(document.activeElement) ? cellOf(document.activeElement)?.dataset.column : null;
    carried(old, fresh);
    old.replaceWith(fresh);
    if (focused !== null) go(like(fresh, focused));
}

const isTypedIn = (row) => editor !== null && row.contains(editor.cell);

const isOlder = (fresh, old) => Number(fresh.dataset.base) < Number(old.dataset.base);

/** What was typed in a row and is wrong, or on its way to the server, goes on in the row that is shown for it. */
function carry(old, fresh) {
    for (const cell of old.querySelectorAll("[aria-invalid], [aria-busy]")) {
        const next = like(fresh, cell.dataset.column);
        const error = cell.querySelector(".error");
        if (!next) continue;
        if (cell.dataset.typed !== undefined) {
            next.dataset.typed = cell.dataset.typed;
            next.dataset.stood = next.querySelector(".t").textContent;
            next.querySelector(".t").textContent = cell.dataset.typed;
        }
        if (error) wrong(next, error);
        for (const state of ["aria-invalid", "aria-busy"]) if (cell.hasAttribute(state)) next.setAttribute(state, "true");
    }
    if (old.classList.contains("chosen")) tick(fresh);
    old.shownAs = fresh;
}

/** As {@link carry}; what is yet to be sent was typed before the others' change, which it must not put back unseen. */
function carryOn(old, fresh) {
    carry(old, fresh);
    if (fresh.querySelector("[data-typed]")) fresh.dataset.base = old.dataset.base;
}

function clash(answer, cell) {
    cell.parentElement.nextElementSibling?.classList.contains("clash-row") && cell.parentElement.nextElementSibling.remove();
    const row = document.createElement("tr");
    row.className = "clash-row";
    const td = row.insertCell();
    td.colSpan = cell.parentElement.cells.length;
    td.append(...answer.querySelectorAll(".clash"));
    row.dataset.column = cell.dataset.column;
    row.dataset.text = cell.dataset.typed ?? "";
    row.fresh = answer.querySelector("tbody tr");
    row.dataset.base = answer.dataset.revision;
    cell.parentElement.after(row);
    say(answer.querySelector(".says").textContent, true);
    row.querySelector("button").focus();
}

function settle(row, mine) {
    const line = row.previousElementSibling;
    const { column, text: typed, base } = row.dataset;
    const id = line.dataset.row;
    const fresh = row.fresh;
    row.remove();
    for (const cell of line.cells) forget(cell);
    if (fresh) replace(id, fresh);
    const cell = at(id, column);
    if (cell) {
        cell.parentElement.dataset.base = base;
        go(cell);
        if (mine) send(cell, typed);
    }
}

function told(answer) {
    say(answer.querySelector(".says").textContent);
    const title = answer.querySelector(".title").textContent;
    if (title) document.getElementById("answer").textContent = title;
    if (answer.dataset.total) grid.dataset.total = answer.dataset.total;
    if (Number(grid.dataset.total) > 0) document.getElementById("nothing")?.remove();
    counts();
    const undo = document.getElementById("undo");
    if (undo && answer.dataset.undo) {
        undo.disabled = false;
        let what = undo.querySelector(".what");
        if (!what) {
            what = document.createElement("span");
            what.className = "what";
            undo.append(what);
        }
        what.textContent = `: ${answer.dataset.undo}`;
    }
}

function say(words, trouble = false) {
    const says = document.getElementById("says");
    says.textContent = words;
    says.classList.toggle("wrong", trouble);
}

/* Which rows there are */

function query(from, most, row = "") {
    return new URLSearchParams({
        row,
        words: document.getElementById("filter").value.trim(),
        sort: grid.dataset.sort,
        down: grid.dataset.down,
        all: grid.dataset.all,
        from: String(from),
        most: String(most),
    });
}

async function fetched(from, most, row) {
    const answer = await fetch(`${grid.dataset.href}/rows?${query(from, most, row)}`);
    if (!answer.ok) return null;
    return new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("table.part");
}

let asked = 0;
/** Rows to be chosen when they come, whoever asks for them. */
let made = new Set();

/** All rows again, as many as there were, and on up to one of them. */
async function reload(least, upTo) {
    const turn = ++asked;
    const part = await fetched(0, Math.min(1000, Math.max(100, least)), upTo);
    if (part === null || turn !== asked || (editor !== null && upTo === undefined)) return;
    const old = new Map(rows().map((row) => [row.dataset.row, row]));
    // an edit may have been answered while these rows were on their way
    if ([...old.values()].some((row) => Number(part.dataset.revision) < Number(row.dataset.base))) return reload(least, upTo);
    for (const fresh of part.tBodies[0].rows) {
        if (old.has(fresh.dataset.row)) carryOn(old.get(fresh.dataset.row), fresh);
        if (made.has(fresh.dataset.row)) tick(fresh);
    }
    const unsettled = [...grid.querySelectorAll(".clash-row")].map((row) => [row.previousElementSibling, row]);
    grid.tBodies[0].replaceChildren(...part.tBodies[0].rows);
    for (const [line, row] of unsettled) if (newest(line).isConnected) newest(line).after(row);
    Object.assign(grid.dataset, part.dataset);
    if (!grid.querySelector("[tabindex='0']")) keep(lines()[0]?.cells[0] ?? null);
    counts();
}

let loading = false;

async function more() {
    const bottom = box.scrollHeight > box.clientHeight + 1 && getComputedStyle(box).overflowY !== "visible"
        ? box.scrollTop + box.clientHeight > box.scrollHeight - 800
        : window.innerHeight + window.scrollY > document.body.scrollHeight - 800;
    if (loading || !bottom || rows().length >= Number(grid.dataset.matching)) return;
    loading = true;
    const part = await fetched(rows().length, 200);
    loading = false;
    if (part === null) return;
    const there = new Set(rows().map((row) => row.dataset.row));
    grid.tBodies[0].append(...[...part.tBodies[0].rows].filter((row) => !there.has(row.dataset.row)));
    grid.dataset.matching = part.dataset.matching;
    counts();
}

let latest = 0; // the revision of the rows that came last

function isInSight(row) {
    const { top, bottom } = row.getBoundingClientRect();
    return bottom > 0 && top < window.innerHeight;
}

/** Rows in sight may be older than others: only those that were in sight were asked for when somebody changed something. */
const isBehind = () => rows().some((row) => Number(row.dataset.base) < latest && isInSight(row));

/** Somebody has changed something: the rows in sight again, where they differ. */
async function refresh() {
    stale = false;
    const all = rows();
    if (all.length === 0) return reload(0);
    const top = Math.max(0, all.findIndex((row) => row.getBoundingClientRect().bottom > 0) - 10);
    const part = await fetched(top, 80);
    if (part === null) return;
    latest = Math.max(latest, Number(part.dataset.revision));
    if (part.dataset.total !== grid.dataset.total) {
        if (editor === null && !grid.querySelector("[aria-invalid]")) return reload(all.length);
        stale = true;
    }
    const shownNow = new Map(rows().map((row) => [row.dataset.row, row]));
    for (const fresh of [...part.tBodies[0].rows]) {
        const old = shownNow.get(fresh.dataset.row);
        if (!old || isOlder(fresh, old) || old.nextElementSibling?.classList.contains("clash-row") || old.querySelector("[aria-busy]")) continue;
        if (same(old, fresh)) old.dataset.base = fresh.dataset.base;
        else if (isTypedIn(old)) stale = true; // its base stays: what is typed was meant for what is shown
        else renew(old, fresh);
    }
}

function same(old, fresh) {
    return [...old.cells].every((cell, i) => cell.querySelector(".t")?.textContent === fresh.cells[i]?.querySelector(".t")?.textContent);
}

function counts() {
    const chosen = rows().filter((row) => row.classList.contains("chosen")).length;
    const total = Number(grid.dataset.total);
    const matching = Number(grid.dataset.matching);
    const words = [matching < total ? `${matching} of ${total} rows` : `${total} ${total === 1 ? "row" : "rows"}`];
    if (chosen > 0) words.push(`${chosen} chosen`);
    document.getElementById("counts").textContent = words.join("; ");
    const doing = document.getElementById("chosen");
    if (doing) doing.hidden = chosen === 0;
}

function mark(box) {
    box.closest("tr").classList.toggle("chosen", box.checked);
    counts();
}

function tick(row) {
    row.classList.add("chosen");
    row.querySelector("input[type=checkbox]").checked = true;
}

async function toHash() {
    const id = decodeURIComponent(location.hash.slice(1));
    if (!id || document.getElementById(id)) return;
    const answer = await fetch(`${grid.dataset.href}?row=${encodeURIComponent(id)}`);
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("grid");
    if (fresh === null) return;
    grid.tBodies[0].replaceChildren(...fresh.tBodies[0].rows);
    const row = rows().find((each) => each.dataset.row === id);
    if (row) {
        row.scrollIntoView({ block: "center" });
        keep(row.cells[0]);
    }
}

/* Several rows at once */

const chosenIds = () => rows().filter((row) => row.classList.contains("chosen")).map((row) => row.dataset.row);

function onTool(event) {
    const button = event.target.closest("button");
    if (button === null) return;
    if ("new" in button.dataset) {
        if (matchMedia("(max-width: 760px)").matches) open("");
        else {
            const cell = grid.tFoot.rows[0].cells[grid.dataset.named ? 0 : 1];
            go(cell);
            edit(cell);
        }
    } else if ("paste" in button.dataset) aside(`${grid.dataset.href}/paste`);
    else if ("duplicate" in button.dataset) batch("duplicate", { row: chosenIds(), times: document.getElementById("times").value });
    else if ("delete" in button.dataset) batch("delete", { row: chosenIds(), base: Math.min(...rows().filter((row) => row.classList.contains("chosen")).map((row) => Number(row.dataset.base))) });
    else if (button.dataset.move) {
        const all = rows();
        const mine = all.filter((row) => row.classList.contains("chosen"));
        const before = button.dataset.move === "up" ? all[all.indexOf(mine[0]) - 1] : all[all.indexOf(mine.at(-1)) + 2];
        if (button.dataset.move === "up" && !before) return;
        batch("move", { row: chosenIds(), before: before?.dataset.row ?? "" }, true);
    }
}

function batch(path, fields, stay = false) {
    queue = queue.then(async () => {
        const answer = await post(path, fields);
        if (answer.dataset.state === "held") {
            beside.replaceChildren(...answer.querySelectorAll(".held"));
            beside.hidden = false;
            beside.querySelector("button").focus();
            beside.dataset.fields = JSON.stringify(fields);
            return say(answer.querySelector(".says").textContent, true);
        }
        if (answer.dataset.state === "conflict") refresh();
        if (answer.dataset.state !== "accepted") return say(answer.querySelector(".error .wrong, .says").textContent || answer.querySelector(".says").textContent, true);
        const fresh = [...answer.querySelectorAll("tbody tr")].map((row) => row.dataset.row);
        if (!stay) made = new Set(fresh);
        grid.dataset.total = answer.dataset.total;
        await reload(rows().length + fresh.length, fresh.at(-1) ?? "");
        setTimeout(() => (made = new Set()), 2000);
        told(answer);
        const first = rows().find((row) => row.dataset.row === fresh[0]);
        if (first && !stay) go(first.cells[0]);
        if (!beside.hidden && path !== "move") shut();
    }).catch(failed);
}

/* Copy and paste */

function onCopy(event) {
    if (editor !== null) return;
    const cell = cellOf(document.activeElement);
    const chosen = rows().filter((row) => row.classList.contains("chosen"));
    if (cell === null) return;
    event.preventDefault();
    const lines = chosen.map((row) => [...row.cells].filter((each) => each.dataset.column).map(text).join("\t"));
    const head = [...rows()[0].cells].filter((each) => each.dataset.column).map(columnTitle).join("\t");
    event.clipboardData.setData("text/plain", chosen.length > 0 ? [head, ...lines].join("\n") : text(cell));
}

function onPaste(event) {
    if (editor !== null || grid.dataset.edits !== "yes") return;
    const words = event.clipboardData.getData("text/plain").replace(/\r\n?/g, "\n").replace(/\n$/, "");
    const cell = cellOf(document.activeElement);
    event.preventDefault();
    if (/[\t\n]/.test(words)) readPasted(words, []);
    else if (cell !== null && mayEdit(cell)) send(cell, words.trim());
}

async function readPasted(words, columns, head = "") {
    const body = new URLSearchParams({ text: words, head });
    for (const column of columns) body.append("columns", column);
    const answer = await fetch(`${grid.dataset.href}/read`, {
        method: "POST",
        body,
        headers: { "X-Housewright-Token": document.body.dataset.token },
    });
    const read = await answer.text();
    if (!answer.ok) return say(refusal(read) ?? "That could not be read.", true);
    put(read);
}

/* Beside */

let back = null;

/** What the page of a request that was refused says. */
const refusal = (html) => new DOMParser().parseFromString(html, "text/html").querySelector("main p:not(:empty)")?.textContent;

async function aside(address) {
    const answer = await fetch(address);
    const words = await answer.text();
    if (!answer.ok) return say(refusal(words) ?? "", true);
    put(words);
}

function put(html) {
    if (beside.hidden) back = document.activeElement;
    const part = new DOMParser().parseFromString(html, "text/html");
    beside.replaceChildren(...part.body.childNodes);
    beside.hidden = false;
    ["[data-take-rows]:enabled", ".paste-form textarea", "[data-close]"].reduce((found, each) => found ?? beside.querySelector(each), null)?.focus();
}

function shut() {
    beside.hidden = true;
    beside.replaceChildren();
    if (back?.isConnected) back.focus();
}

const open = (id) => aside(`${grid.dataset.href}/details?row=${encodeURIComponent(id)}`);

document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && beside && !beside.hidden && beside.contains(document.activeElement) && !event.defaultPrevented) shut();
});

function onBesideClick(event) {
    const button = event.target.closest("button");
    if (button === null) return;
    if ("close" in button.dataset) shut();
    else if (button.dataset.offers) aside(button.dataset.offers);
    else if ("everywhere" in button.dataset) batch("delete", { ...JSON.parse(beside.dataset.fields), everywhere: "yes" });
    else if (button.dataset.take) {
        queue = queue.then(async () => {
            const answer = await post(button.dataset.action, { take: button.dataset.take });
            if (answer.dataset.state !== "accepted") return say(answer.querySelector(".says").textContent, true);
            say(answer.querySelector(".says").textContent);
            const thing = button.dataset.action.split("/").at(-2);
            await open(decodeURIComponent(thing));
            refresh();
        }).catch(failed);
    } else if ("takeRows" in button.dataset) {
        const form = button.closest("form");
        batch("take", { text: form.elements.text.value, columns: columnsOf(form), head: headOf(form), base: form.dataset.base });
    }
}

const columnsOf = (form) => [...form.querySelectorAll("select[name=columns]")].map((each) => each.value);

/** What somebody says of the first row; nothing where nothing was read yet. */
const headOf = (form) => (form.elements.head ? (form.elements.head.checked ? "yes" : "no") : "");

const isAsRead = (form) => form.elements.text.value === form.elements.text.defaultValue;

/** Read again as somebody says it is; other headings are other guesses. */
async function onBesideChange(event) {
    const field = event.target;
    const form = field.form;
    if (!form?.classList.contains("paste-form") || !["head", "columns"].includes(field.name)) return;
    const at = [...form.querySelectorAll(`[name=${field.name}]`)].indexOf(field);
    await readPasted(form.elements.text.value, field.name === "columns" && isAsRead(form) ? columnsOf(form) : [], headOf(form));
    beside.querySelectorAll(`.paste-form [name=${field.name}]`)[at]?.focus();
}

function onBesideSubmit(event) {
    event.preventDefault();
    event.stopPropagation();
    const form = event.target;
    if (form.classList.contains("paste-form")) return void (isAsRead(form) ? readPasted(form.elements.text.value, columnsOf(form), headOf(form)) : readPasted(form.elements.text.value, []));
    const fields = {};
    for (const [name, value] of new FormData(form)) if (name !== "token") fields[name] = value;
    queue = queue.then(async () => {
        const answer = await post(form.getAttribute("action"), fields);
        for (const each of form.querySelectorAll(".error")) each.remove();
        for (const each of form.querySelectorAll("[aria-invalid]")) each.removeAttribute("aria-invalid");
        if (answer.dataset.state === "accepted") {
            if (form.dataset.row) for (const fresh of [...answer.querySelectorAll("tbody tr")]) replace(answer.dataset.was || fresh.dataset.row, fresh);
            else await reload(rows().length + 1);
            told(answer);
            return shut();
        }
        for (const error of [...answer.querySelectorAll(".error")]) {
            const field = form.querySelector(`[data-column="${CSS.escape(error.dataset.column)}"], [name="${CSS.escape(error.dataset.column)}"]`) ?? form.querySelector("[data-field]");
            field.setAttribute("aria-invalid", "true");
            field.closest("details")?.setAttribute("open", "");
            field.after(error);
            error.querySelector("[data-nearest]")?.addEventListener("click", () => {
                field.value = error.querySelector("[data-nearest]").dataset.nearest;
                error.remove();
                field.focus();
            });
            field.focus();
        }
        for (const part of answer.querySelectorAll(".clash")) {
            form.prepend(part);
            part.addEventListener("click", (press) => {
                if (press.target.closest("[data-mine]")) {
                    form.elements.base.value = answer.dataset.revision;
                    part.remove();
                    form.requestSubmit();
                } else if (press.target.closest("[data-theirs]")) open(form.dataset.row);
            });
        }
        say(answer.querySelector(".error .wrong")?.textContent ?? answer.querySelector(".says").textContent, true);
    }).catch(failed);
}

function onBesideFocus(event) {
    const field = event.target;
    if (!("field" in field.dataset) || field.dataset.ready || field.disabled) return;
    field.dataset.ready = "yes";
    const list = choose(field, async (words) => {
        const row = field.form.dataset.row || (field.form.elements["c-device"]?.value ?? "");
        const ask = new URLSearchParams({ row, column: field.dataset.column, text: words });
        const answer = await fetch(`${grid.dataset.href}/choices?${ask}`);
        return answer.ok ? answer.text() : "";
    });
    field.addEventListener("keydown", (key) => {
        if (list.key(key)) key.stopPropagation();
    });
    field.addEventListener("blur", () => list.close());
}

/* Later */

function soon(action, delay) {
    let timer = 0;
    return () => {
        clearTimeout(timer);
        timer = setTimeout(action, delay);
    };
}

start();
document.addEventListener("htmx:afterSettle", start);
document.addEventListener("refreshed", () => document.getElementById("grid") && refresh());
window.addEventListener("hashchange", toHash);
