// Looks at a page at several widths, each in a frame of its own, and lists what is wrong.
"use strict";
const wrong = [];
const seen = [];

function luminance(colour) {
  const [r, g, b] = colour.match(/[\d.]+/g).slice(0, 3).map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function pictures(at, frame, complain) {
  for (const figure of frame.document.querySelectorAll("figure")) {
    const shown = [...figure.querySelectorAll("svg")].filter((svg) => svg.getBoundingClientRect().height > 0);
    if (shown.length !== 1) {
      complain(figure.id + " shows " + shown.length + " pictures");
      continue;
    }
    seen.push(at + " " + figure.id + " " + shown[0].getAttribute("class"));
    const paper = shown[0].getBoundingClientRect();
    const scale = paper.width / shown[0].viewBox.baseVal.width;
    const words = [...shown[0].querySelectorAll("text")].map((text) => ({
      what: figure.id + ' "' + text.textContent + '"',
      box: text.getBoundingClientRect(),
      clip: clip(text),
      size: scale * parseFloat(frame.getComputedStyle(text).fontSize),
    })).filter((word) => word.box.width > 0);
    if (words.length < 5) {
      complain(figure.id + " has " + words.length + " words");
    }
    words.forEach((word, number) => {
      if (word.size < 10) {
        complain(word.what + " is " + word.size.toFixed(1) + " px high");
      }
      for (const around of [paper, word.clip]) {
        if (word.box.left < around.left - 1 || word.box.right > around.right + 1
            || word.box.top < around.top - 1 || word.box.bottom > around.bottom + 1) {
          complain(word.what + " is clipped");
        }
      }
      for (const other of words.slice(number + 1)) {
        const across = Math.min(word.box.right, other.box.right) - Math.max(word.box.left, other.box.left);
        const down = Math.min(word.box.bottom, other.box.bottom) - Math.max(word.box.top, other.box.top);
        if (across > 2 && down > 4) {
          complain(word.what + " lies on " + other.what);
        }
      }
    });
  }
}

/** Where a picture cuts off what it draws. */
function clip(text) {
  for (let group = text; group.tagName !== "svg"; group = group.parentNode) {
    const path = group.getAttribute("clip-path") || group.style.clipPath;
    const id = path && path.match(/#([^)"']+)/);
    if (id) {
      const box = group.ownerDocument.getElementById(id[1]).firstElementChild.getBBox();
      const to = group.getScreenCTM();
      const corners = [[0, 0], [box.width, 0], [0, box.height], [box.width, box.height]].map(
          ([x, y]) => new DOMPoint(box.x + x, box.y + y).matrixTransform(to));
      return {
        left: Math.min(...corners.map((corner) => corner.x)),
        right: Math.max(...corners.map((corner) => corner.x)),
        top: Math.min(...corners.map((corner) => corner.y)),
        bottom: Math.max(...corners.map((corner) => corner.y)),
      };
    }
  }
  return text.ownerSVGElement.getBoundingClientRect();
}

function texts(frame, complain) {
  for (const element of frame.document.body.querySelectorAll(":not(svg, svg *)")) {
    if (element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0) {
      complain(element.tagName + " is wider than its place: " + element.textContent.slice(0, 60));
    }
    const own = [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim());
    if (own) {
      const style = frame.getComputedStyle(element);
      const contrast = 1.05 / (luminance(style.color) + 0.05);
      if (contrast < 4.5) {
        complain(element.tagName + " has a contrast of " + contrast.toFixed(1));
      }
      if (parseFloat(style.fontSize) < 12) {
        complain(element.tagName + " is " + style.fontSize + " high");
      }
    }
  }
}

window.addEventListener("load", () => {
  for (const iframe of document.querySelectorAll("iframe")) {
    const frame = iframe.contentWindow;
    const at = frame.innerWidth;
    const complain = (what) => wrong.push(at + " px: " + what);
    frame.document.querySelectorAll("details").forEach((details) => (details.open = true));
    if (frame.document.documentElement.scrollWidth > at) {
      complain("the page is " + frame.document.documentElement.scrollWidth + " px wide");
    }
    pictures(at, frame, complain);
    texts(frame, complain);
  }
  const list = (id, lines) => {
    const element = document.body.appendChild(document.createElement("ul"));
    element.id = id;
    lines.forEach((line) => (element.appendChild(document.createElement("li")).textContent = line));
  };
  list("seen", seen);
  list("wrong", wrong);
});
