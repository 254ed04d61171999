// Starts the resident's program, and shows a way out when it cannot go on.
import { guard, stopped } from "./recover.js";
import init from "./pkg/resident.js";

guard();
init({ module_or_path: "pkg/resident_bg.wasm" }).catch((problem) => {
  console.error(problem);
  if (stopped(problem)) return;
  // The program itself did not arrive: the part of the page written for that is shown.
  for (const id of ["start-problem", "start-problem-unreachable"]) {
    document.getElementById(id).hidden = false;
  }
});
