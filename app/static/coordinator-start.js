// Starts the coordinator's program, and shows a way out when it cannot go on.
import { guard } from "./recover.js";
import init from "./pkg/coordinator.js";

guard();
init({ module_or_path: "pkg/coordinator_bg.wasm" }).catch(() => {
  for (const id of ["start-problem", "start-problem-unreachable"]) {
    document.getElementById(id).hidden = false;
  }
});
