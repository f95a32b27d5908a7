// Keys that work on every page: undo, redo, help, the filter.

export function listen() {
    document.addEventListener("keydown", (event) => {
        if (isTyping(event.target)) return;
        const command = event.ctrlKey || event.metaKey;
        const key = event.key.toLowerCase();
        if (command && key === "z" && !event.shiftKey) undo(event);
        else if (command && (key === "y" || (key === "z" && event.shiftKey))) press("redo", event);
        else if (!command && !event.altKey && event.key === "?") location.assign("/help");
        else if (!command && !event.altKey && event.key === "/") focus("filter", event);
    });
}

function isTyping(target) {
    return target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));
}

/** What was typed and refused is taken back first, by whoever shows it. */
function undo(event) {
    if (document.dispatchEvent(new CustomEvent("undoing", { cancelable: true }))) press("undo", event);
    else event.preventDefault();
}

function press(id, event) {
    const button = document.getElementById(id);
    if (button === null || button.disabled) return;
    event.preventDefault();
    button.click();
}

function focus(id, event) {
    const field = document.getElementById(id);
    if (field === null) return;
    event.preventDefault();
    field.focus();
}
