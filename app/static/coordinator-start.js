// Starts the coordinator's program, and shows a way out when it cannot go on.
import { guard, stopped } from "./recover.js";
import init from "./pkg/coordinator.js";

guard();
// What few people unfold is fetched when they do.
const unfold = async ({ target }) => target.id === "ruler" && (await import("./ruler.js")).ruler(target);
addEventListener("toggle", unfold, true);
init({ module_or_path: "pkg/coordinator_bg.wasm" }).catch((problem) => {
  console.error(problem);
  if (stopped(problem)) return;
  // The program itself did not arrive: the part of the page written for that is shown.
  for (const id of ["start-problem", "start-problem-unreachable"]) {
    document.getElementById(id).hidden = false;
  }
});
