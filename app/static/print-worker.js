// Starts the print worker's program.
import init from "./pkg/print_worker.js";

init({ module_or_path: "pkg/print_worker_bg.wasm" }).catch(() => postMessage("failed"));
