/** Draws growth: processor time and memory against the number of entries, both axes by logarithm, so that what grows evenly is a straight line. */
import { scaleLog } from "d3-scale";

const [WIDTH, HEIGHT, LEFT, RIGHT, TOP, BOTTOM] = [460, 320, 56, 130, 36, 44];
const NAMES = { ours: "scarfline build", eleventy: "plain Eleventy" };

export function chart(points) {
  const panels = [
    ["cpu", "Processor time, s"],
    ["memory", "Most memory, MB"],
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH * panels.length} ${HEIGHT}" font-family="system-ui, sans-serif" font-size="12" fill="#1f2426">
<rect width="100%" height="100%" fill="#f4efe4"/>
${panels.map(([what, title], at) => `<g transform="translate(${at * WIDTH} 0)">${panel(points, what, title)}</g>`).join("\n")}
</svg>
`;
}

function panel(points, what, title) {
  const sizes = points.map(({ size }) => size);
  const values = points.flatMap((point) => [point.ours[what], point.eleventy[what]]);
  const x = scaleLog([Math.min(...sizes), Math.max(...sizes)], [LEFT, WIDTH - RIGHT]);
  const y = scaleLog([Math.min(...values), Math.max(...values)], [HEIGHT - BOTTOM, TOP]).nice();
  const short = (number) => Number(number.toFixed(1));
  const ticks = y
    .ticks(4)
    .map(
      (value) =>
        `<path d="M${LEFT} ${short(y(value))}H${WIDTH - RIGHT}" stroke="#cfc6b2"/><text x="${LEFT - 6}" y="${short(y(value)) + 4}" text-anchor="end">${value}</text>`,
    );
  const feet = sizes.map(
    (size) => `<text x="${short(x(size))}" y="${HEIGHT - BOTTOM + 18}" text-anchor="middle">${size}</text>`,
  );
  const lines = Object.entries(NAMES).map(([key, name]) => {
    const places = points.map((point) => [short(x(point.size)), short(y(point[key][what]))]);
    const [lastX, lastY] = places.at(-1);
    const dots = places.map(([px, py]) => `<circle cx="${px}" cy="${py}" r="3"/>`).join("");
    return `<g ${key === "ours" ? 'fill="#84243a" stroke="#84243a"' : 'fill="#1f2426" stroke="#1f2426" stroke-dasharray="5 3"'}><path fill="none" stroke-width="2" d="M${places.map((place) => place.join(" ")).join("L")}"/>${dots}<text stroke="none" x="${lastX + 8}" y="${lastY + 4}">${name}</text></g>`;
  });
  return `<text x="${LEFT}" y="20" font-weight="600">${title}</text>${ticks.join("")}${feet.join("")}<text x="${(LEFT + WIDTH - RIGHT) / 2}" y="${HEIGHT - 8}" text-anchor="middle">entries</text>${lines.join("")}`;
}
