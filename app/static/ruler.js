// A ruler on the screen, made true with a card that everybody carries.
//
// A browser does not know how large its screen is: its inches are guesses. So no ruler is shown before
// somebody has held a card against the screen; what they found is remembered. Lengths are micrometres.

// A bank card's sides: ISO/IEC 7810, format ID-1, 85.60 x 53.98 mm, corners of 3.18 mm (from memory).
const SHORT = 53980;
const LONG = 85600;
const CORNER = 3180;
// How wide the card's short side can be in the page's pixels: from a screen seen from afar to a phone's.
const NARROWEST = 120;
const WIDEST = 460;
// The page's own idea of an inch, where the slider begins (CSS Values and Units: "1in = 96px").
const GUESS = (SHORT / 25400) * 96;
// Inches are halved down to eighths, centimetres have ten millimetres.
const UNITS = { in: [3175, 8, 4], cm: [1000, 10, 5] };
// Remembered in the screen's own pixels: the page's change with its zoom.
const KEY = "lidleaf-card";

/** Fills an unfolded ruler: the slider, the card as wide as it says, and the ruler once it was moved. */
export function ruler(place) {
  const slider = place.querySelector("#card");
  if (slider.max === String(room(place))) return;
  slider.min = NARROWEST;
  slider.max = room(place);
  const known = remembered();
  slider.value = Math.round(known || GUESS);
  drawCard(place, slider.value);
  if (known) drawRuler(place, slider.value);
  slider.addEventListener("input", () => {
    remember(slider.value);
    drawCard(place, slider.value);
    drawRuler(place, slider.value);
  });
}

const room = (place) => Math.min(WIDEST, Math.floor(place.clientWidth));

function remembered() {
  try {
    return Number(localStorage.getItem(KEY)) / devicePixelRatio;
  } catch {
    return 0;
  }
}

function remember(width) {
  try {
    localStorage.setItem(KEY, Math.round(width * devicePixelRatio));
  } catch {
    // A phone that keeps nothing measures anew.
  }
}

function drawCard(place, width) {
  const height = 88;
  place.querySelector("#card-drawing").innerHTML =
    `<svg width="${width}" height="${height}" viewBox="0 0 ${SHORT} ${(height * SHORT) / width}" aria-hidden="true">
    <rect width="${SHORT}" height="${LONG}" rx="${CORNER}"/><path d="M38000 0h9000v${LONG}h-9000z"/></svg>`;
}

function drawRuler(place, width) {
  const long = (place.clientWidth * SHORT) / width;
  const [step, whole, half] = UNITS[place.dataset.unit];
  const digits = new Intl.NumberFormat(document.documentElement.lang);
  let ticks = "";
  let numbers = "";
  for (let at = 0; at * step < long; at++) {
    ticks += `M${at * step} 0v${at % whole === 0 ? 6000 : at % half === 0 ? 4500 : 2500}`;
    if (at && at % whole === 0) numbers += `<text x="${at * step + 700}" y="9800">${digits.format(at / whole)}</text>`;
  }
  const marks = place.dataset.marks.split(" ").filter((mark) => mark && mark < long);
  const limits = marks.map((mark) => `<path class="limit" d="M${mark} 0v15000l-1500-2500h3000l-1500 2500"/>`).join("");
  place.querySelector("#ruler-use").hidden = false;
  place.querySelector("#ruler-drawing").innerHTML =
    `<svg width="${place.clientWidth}" viewBox="0 0 ${long} 15500" aria-hidden="true"><path d="${ticks}"/>${numbers}${limits}</svg>`;
}
