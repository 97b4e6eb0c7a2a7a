/**
 * What a published drawing may be made of. All that is not named here is left out where it draws nothing, and is a
 * problem elsewhere.
 */

export const SVG = "http://www.w3.org/2000/svg";
export const XLINK = "http://www.w3.org/1999/xlink";
export const XML = "http://www.w3.org/XML/1998/namespace";
export const XMLNS = "http://www.w3.org/2000/xmlns/";

/** Of these namespaces browsers run or show elements and attributes; those of any other draw nothing. */
export const ALIVE: ReadonlySet<string> = new Set([
  SVG,
  XLINK,
  XML,
  "http://www.w3.org/1999/xhtml",
  "http://www.w3.org/1998/Math/MathML",
  "http://www.w3.org/2001/xml-events",
  "http://www.w3.org/1999/XSL/Transform",
]);

const words = (list: string): readonly string[] => list.trim().split(/\s+/);

export const ELEMENTS: ReadonlySet<string> = new Set(
  words(`svg g defs symbol use title desc path rect circle ellipse line polyline polygon text tspan textPath
    marker clipPath mask pattern linearGradient radialGradient stop style
    filter feGaussianBlur feOffset feBlend feFlood feComposite feMerge feMergeNode feColorMatrix`),
);

/** Left out with all that is in them: they draw nothing. */
export const NOTES: ReadonlySet<string> = new Set(["metadata"]);

/** Elements of which the text is shown or told. */
export const WORDED: ReadonlySet<string> = new Set(["title", "desc", "text", "tspan", "textPath"]);

/** CSS properties, which are attributes as well. */
export const PROPERTIES: ReadonlySet<string> = new Set(
  words(`alignment-baseline baseline-shift clip-path clip-rule color color-interpolation color-interpolation-filters
    color-rendering direction display dominant-baseline fill fill-opacity fill-rule filter flood-color flood-opacity
    font font-family font-feature-settings font-kerning font-size font-size-adjust font-stretch font-style font-variant
    font-variant-alternates font-variant-caps font-variant-east-asian font-variant-ligatures font-variant-numeric
    font-variant-position font-variation-settings font-weight image-rendering inline-size isolation letter-spacing
    line-height marker marker-end marker-mid marker-start mask mask-type mix-blend-mode opacity overflow paint-order
    pointer-events shape-rendering stop-color stop-opacity stroke stroke-dasharray stroke-dashoffset stroke-linecap
    stroke-linejoin stroke-miterlimit stroke-opacity stroke-width text-align text-anchor text-decoration
    text-decoration-color text-decoration-line text-decoration-style text-indent text-orientation text-rendering
    text-transform transform transform-origin unicode-bidi vector-effect visibility white-space word-spacing
    writing-mode`),
);

/** Properties of drawing programs and of withdrawn drafts, which no browser draws by. */
export const IDLE_PROPERTIES: ReadonlySet<string> = new Set(
  words(`block-progression clip color-profile enable-background glyph-orientation-horizontal
    glyph-orientation-vertical kerning shape-inside shape-margin shape-padding solid-color solid-opacity text-decoration-skip-ink`),
);

export const FUNCTIONS: ReadonlySet<string> = new Set(
  words("rgb rgba hsl hsla matrix translate translateX translateY rotate scale scaleX scaleY skewX skewY").map((name) =>
    name.toLowerCase(),
  ),
);

/** How the value of an attribute is looked at. */
export type AttributeKind = "words" | "measure" | "path" | "transform" | "reference" | "styles" | "property";

const kinds = (kind: AttributeKind, list: string): [string, AttributeKind][] => words(list).map((name) => [name, kind]);

/** Attributes without a namespace. */
export const ATTRIBUTES: ReadonlyMap<string, AttributeKind> = new Map([
  ...[...PROPERTIES].map((name): [string, AttributeKind] => [name, "property"]),
  ...kinds("words", "id class role lang"),
  ...kinds(
    "measure",
    `x y x1 y1 x2 y2 cx cy r rx ry fx fy fr dx dy width height offset viewBox preserveAspectRatio points pathLength
      rotate textLength lengthAdjust startOffset method spacing side refX refY markerWidth markerHeight markerUnits
      orient clipPathUnits maskUnits maskContentUnits patternUnits patternContentUnits gradientUnits spreadMethod
      filterUnits primitiveUnits in in2 result stdDeviation edgeMode mode operator k1 k2 k3 k4 type values`,
  ),
  ...kinds("path", "d"),
  ...kinds("transform", "transform patternTransform gradientTransform"),
  ...kinds("reference", "href"),
  ...kinds("styles", "style"),
]);

/** Attributes without a namespace that draw nothing and load nothing. */
export const IDLE_ATTRIBUTES: ReadonlySet<string> = new Set(
  words(
    "version baseProfile contentScriptType contentStyleType externalResourcesRequired zoomAndPan tabindex focusable enable-background",
  ),
);

/** Which a reference may stand on: they take what it names out of the same drawing. */
export const REFERRING: ReadonlySet<string> = new Set(
  words("use textPath linearGradient radialGradient pattern filter"),
);
