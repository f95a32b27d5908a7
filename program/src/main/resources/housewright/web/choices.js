// Type-ahead for one field: the server says what may stand there, arrow keys or the mouse choose.

let turn = 0;

/**
 * @param input the field
 * @param ask gives the choices for a text, as list items
 */
export function choose(input, ask) {
    const list = document.getElementById("choices");
    let at = -1;
    let open = false;
    let timer = 0;
    input.setAttribute("role", "combobox");
    input.setAttribute("aria-autocomplete", "list");
    input.setAttribute("aria-controls", "choices");
    input.setAttribute("aria-expanded", "false");
    input.addEventListener("input", () => {
        if (open) narrow();
        clearTimeout(timer);
        timer = setTimeout(look, 60);
    });

    async function look() {
        const mine = ++turn;
        const text = await ask(input.value);
        if (mine !== turn || document.activeElement !== input) return;
        const page = new DOMParser().parseFromString(text, "text/html");
        const items = [...page.querySelectorAll("li")].filter((item) => item.dataset.text !== input.value);
        if (items.length === 0) return close();
        const marked = list.children[at]?.dataset.text; // with the arrow keys, while these were on their way
        list.replaceChildren(...items);
        list.onmousedown = (event) => {
            const item = event.target.closest("li");
            event.preventDefault();
            if (item) pick(item);
        };
        if (!open) list.showPopover?.();
        open = true;
        input.setAttribute("aria-expanded", "true");
        input.removeAttribute("aria-activedescendant");
        at = marked === undefined ? -1 : items.findIndex((item) => item.dataset.text === marked);
        if (at >= 0) mark();
        place();
    }

    /** What no longer matches is not offered while the server is asked anew: a quick hand would choose it. */
    function narrow() {
        const words = input.value.toLowerCase().split(/\s+/);
        const items = [...list.children].filter((item) => {
            const said = `${item.dataset.text} ${item.textContent}`.toLowerCase();
            return words.every((word) => said.includes(word));
        });
        at = -1;
        input.removeAttribute("aria-activedescendant");
        for (const item of items) item.removeAttribute("aria-selected");
        list.replaceChildren(...items);
        if (items.length === 0) close();
    }

    function place() {
        const field = input.getBoundingClientRect();
        const below = window.innerHeight - field.bottom;
        list.style.left = `${Math.max(4, Math.min(field.left, window.innerWidth - list.offsetWidth - 4))}px`;
        list.style.maxHeight = `${Math.max(120, Math.min(320, Math.max(below, field.top) - 12))}px`;
        list.style.top = below > 200 || below > field.top ? `${field.bottom + 1}px` : `${field.top - list.offsetHeight - 1}px`;
    }

    function close() {
        clearTimeout(timer);
        turn++;
        if (open) list.hidePopover?.();
        open = false;
        at = -1;
        input.setAttribute("aria-expanded", "false");
        input.removeAttribute("aria-activedescendant");
    }

    function move(step) {
        const items = [...list.children];
        items[at]?.removeAttribute("aria-selected");
        at = (at + step + items.length + 1) % (items.length + 1);
        if (at === items.length) at = step > 0 ? 0 : items.length - 1;
        mark();
    }

    function mark() {
        const item = list.children[at];
        item.setAttribute("aria-selected", "true");
        item.scrollIntoView({ block: "nearest" });
        input.setAttribute("aria-activedescendant", item.id);
    }

    function pick(item) {
        input.value = item.dataset.text;
        input.dispatchEvent(new Event("input", { bubbles: true }));
        close();
        if (item.dataset.open) look();
    }

    /** Whether the key was for the list. */
    function key(event) {
        if (!open) {
            if (event.key === "ArrowDown" && event.altKey) {
                event.preventDefault();
                look();
                return true;
            }
            return false;
        }
        if (event.key === "ArrowDown" || event.key === "ArrowUp") {
            event.preventDefault();
            move(event.key === "ArrowDown" ? 1 : -1);
            return true;
        }
        if ((event.key === "Enter" || event.key === "Tab") && at >= 0) {
            const item = list.children[at];
            pick(item);
            if (event.key === "Enter" && item.dataset.open) event.preventDefault();
            return Boolean(item.dataset.open);
        }
        if (event.key === "Escape") {
            event.preventDefault();
            event.stopPropagation();
            close();
            return true;
        }
        return false;
    }

    return { look, close, key };
}
