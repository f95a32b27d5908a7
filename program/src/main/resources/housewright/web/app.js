// What every page does: follows other people's changes, and knows its keys.
import { follow } from "./live.js";
import { listen } from "./keys.js";

follow(document.body.dataset.live);
listen();
