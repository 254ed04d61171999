// Starts the resident's program, and shows a way out when it cannot go on.
import { guard, stopped } from "./recover.js";
import init from "./pkg/resident.js";

guard();
fetchWords();
init({ module_or_path: "pkg/resident_bg.wasm" }).catch((problem) => {
  console.error(problem);
  if (stopped(problem)) return;
  // The program itself did not arrive: the part of the page written for that is shown.
  for (const id of ["start-problem", "start-problem-unreachable"]) {
    document.getElementById(id).hidden = false;
  }
});

// What few people unfold is fetched when they do.
const unfold = async ({ target }) => target.id === "ruler" && (await import("./ruler.js")).ruler(target);
addEventListener("toggle", unfold, true);

// The words are asked for while the program is still on its way. It decides which ones: those of the
// address, of the last choice, of the browser; a wrong guess costs a file.
function fetchWords() {
  const offered = document.getElementById("app").dataset.languages?.split(" ");
  if (!offered) return;
  let chosen;
  try {
    chosen = JSON.parse(localStorage.getItem("lidleaf-resident")).language;
  } catch {
    // Nothing was chosen, or nothing is kept.
  }
  const primary = (tag) => tag.split("-")[0].toLowerCase();
  const wanted = [location.hash.split("/")[1], chosen, ...navigator.languages, offered[0]].filter(Boolean);
  const tag = wanted.map((want) => offered.find((one) => primary(one) === primary(want))).find(Boolean);
  const link = document.createElement("link");
  Object.assign(link, { rel: "preload", as: "fetch", crossOrigin: "anonymous", href: `data/lang/${tag}.txt` });
  document.head.append(link);
}
