"use strict";

/** The night behind the pixels, and a pixel without light: the inks of the program's pictures. */
const NIGHT = [9 / 255, 10 / 255, 15 / 255];
const UNLIT = [44 / 255, 47 / 255, 56 / 255];

/** A disc is never smaller, in dots of the canvas: its middle dot has exactly its colour. */
const LEAST_RADIUS = 1.25;

/** How often the glow of all pixels together may cover the canvas. */
const GLOW_COVERS = 2.5;

/** How bright a glow is in its middle, as a share of the light. */
const GLOW_SHARE = 0.34;

/** On a canvas with 256 steps less than half of one is not seen. */
const UNSEEN = 0.5 / 255;

/** Places and colours stand in textures of so many columns. */
const COLUMNS = 1024;

const CORNERS = `#version 300 es
uniform highp sampler2D places;
uniform highp sampler2D colours;
uniform mat3 rows;
uniform vec4 lens;
uniform vec2 shift;
uniform vec2 canvas;
uniform vec3 disc;
uniform float glow;
flat out vec3 light;
flat out float radius;
flat out float reach;
out vec2 spot;
void main() {
  int pixel = gl_VertexID >> 2;
  ivec2 entry = ivec2(pixel % ${COLUMNS}, pixel / ${COLUMNS});
  vec2 corner = vec2(gl_VertexID & 1, gl_VertexID >> 1 & 1) * 2.0 - 1.0;
  vec3 eye = rows * texelFetch(places, entry, 0).xyz;
  float away = lens.x - eye.z;
  float dots = lens.y / away;
  light = texelFetch(colours, entry, 0).rgb;
  radius = max(disc.y, disc.x * dots);
  reach = glow > 0.5 ? min(radius * 5.0 + 1.0, max(disc.z, radius + 2.0)) : radius + 0.5;
  float most = max(light.r, max(light.g, light.b));
  float unseenShare = pow(${UNSEEN / GLOW_SHARE} / max(most, 1e-6), 1.0 / 3.0);
  spot = corner * (glow > 0.5 ? reach * max(0.0, 1.0 - unseenShare) : reach);
  vec2 seen = eye.xy * dots + shift + spot;
  float span = lens.w - lens.z;
  float depth = ((lens.w + lens.z) * away - 2.0 * lens.w * lens.z) / span;
  gl_Position = vec4(seen * 2.0 / canvas * away, depth, away);
}`;

const SPOTS = `#version 300 es
precision highp float;
flat in vec3 light;
flat in float radius;
flat in float reach;
in vec2 spot;
uniform float glow;
uniform vec3 unlit;
out vec4 drawn;
void main() {
  float away = length(spot);
  if (glow > 0.5) {
    float left = max(0.0, 1.0 - away / reach);
    drawn = vec4(light * ${GLOW_SHARE} * left * left * left, 0.0);
    return;
  }
  float cover = clamp(radius + 0.5 - away, 0.0, 1.0);
  if (cover < 0.02) {
    discard;
  }
  float dark = max(0.0, 1.0 - max(light.r, max(light.g, light.b)) / unlit.b);
  float rim = smoothstep(0.45 * radius, 0.8 * radius, away);
  drawn = vec4((light + unlit * dark * rim) * cover, cover);
}`;

/**
 * Draws pixels by WebGL 2: a square for each, two passes, first what glows, then the discs. All squares are one list of
 * triangles: where a program stands in for a graphics card, instances take half as long again.
 */
class GlowingDots {
  /** @throws Error where there is no WebGL 2 */
  constructor(canvas, table) {
    this.canvas = canvas;
    this.table = table;
    this.gl = canvas.getContext("webgl2", { alpha: false, antialias: false, powerPreference: "high-performance" });
    if (!this.gl) {
      throw new Error("there is no WebGL 2");
    }
    this.build();
  }

  /** All that lives on the graphics card; made anew when that was lost. */
  build() {
    const gl = this.gl;
    this.program = this.linked(CORNERS, SPOTS);
    const names = ["places", "colours", "rows", "lens", "shift", "canvas", "disc", "unlit", "glow"];
    this.at = Object.fromEntries(names.map((name) => [name, gl.getUniformLocation(this.program, name)]));
    this.vertices = gl.createVertexArray();
    gl.bindVertexArray(this.vertices);
    this.corners = gl.createBuffer();
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, this.corners);
    gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, this.triangles(), gl.STATIC_DRAW);
    gl.pixelStorei(gl.UNPACK_ALIGNMENT, 1);
    this.places = this.texture(gl.RGB32F, gl.FLOAT, this.placesOfTable());
    this.colours = this.texture(gl.RGB8, gl.UNSIGNED_BYTE, new Uint8Array(3 * this.table.pixels));
  }

  /** Two for each pixel; its corners have four numbers that follow each other. */
  triangles() {
    const corners = new Uint32Array(6 * this.table.pixels);
    for (let i = 0; i < this.table.pixels; i++) {
      corners.set([4 * i, 4 * i + 1, 4 * i + 2, 4 * i + 2, 4 * i + 1, 4 * i + 3], 6 * i);
    }
    return corners;
  }

  placesOfTable() {
    const { pixels, x, y, z } = this.table;
    const places = new Float32Array(3 * pixels);
    for (let i = 0; i < pixels; i++) {
      places.set([x[i], y[i], z[i]], 3 * i);
    }
    return places;
  }

  /** With three values for each pixel. */
  texture(format, type, values) {
    const gl = this.gl;
    const texture = gl.createTexture();
    gl.bindTexture(gl.TEXTURE_2D, texture);
    gl.texStorage2D(gl.TEXTURE_2D, 1, format, COLUMNS, Math.ceil(this.table.pixels / COLUMNS));
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST);
    this.fill(type, values);
    return texture;
  }

  /** Into the texture that is bound: all full rows at once, then what is left. */
  fill(type, values) {
    const { gl } = this;
    const rows = Math.floor(this.table.pixels / COLUMNS);
    const left = this.table.pixels - rows * COLUMNS;
    if (rows > 0) {
      gl.texSubImage2D(gl.TEXTURE_2D, 0, 0, 0, COLUMNS, rows, gl.RGB, type, values, 0);
    }
    if (left > 0) {
      gl.texSubImage2D(gl.TEXTURE_2D, 0, 0, rows, left, 1, gl.RGB, type, values, 3 * rows * COLUMNS);
    }
  }

  linked(vertexText, fragmentText) {
    const gl = this.gl;
    const program = gl.createProgram();
    for (const [type, text] of [[gl.VERTEX_SHADER, vertexText], [gl.FRAGMENT_SHADER, fragmentText]]) {
      const shader = gl.createShader(type);
      gl.shaderSource(shader, text);
      gl.compileShader(shader);
      gl.attachShader(program, shader);
      // It lives as long as the program.
      gl.deleteShader(shader);
    }
    gl.linkProgram(program);
    if (!gl.getProgramParameter(program, gl.LINK_STATUS) && !gl.isContextLost()) {
      throw new Error("the drawing does not compile: " + gl.getProgramInfoLog(program));
    }
    return program;
  }

  /** How far a glow reaches at most: what costs time is area, so all together cover the canvas a few times and no more. */
  glowReach(glow) {
    const share = (GLOW_COVERS * glow * this.canvas.width * this.canvas.height) / this.table.pixels;
    return Math.sqrt(share) / 2;
  }

  /** @param glow how much glow there may be: 1 all, 0 none */
  draw(lens, rgb, density, glow) {
    const gl = this.gl;
    if (rgb !== this.uploaded) {
      gl.bindTexture(gl.TEXTURE_2D, this.colours);
      this.fill(gl.UNSIGNED_BYTE, rgb);
      this.uploaded = rgb;
    }
    gl.viewport(0, 0, this.canvas.width, this.canvas.height);
    gl.clearColor(...NIGHT, 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    gl.useProgram(this.program);
    gl.bindVertexArray(this.vertices);
    this.bind(0, this.at.places, this.places);
    this.bind(1, this.at.colours, this.colours);
    gl.uniformMatrix3fv(this.at.rows, true, lens.rows.flat());
    gl.uniform4f(this.at.lens, lens.distance, lens.scale, lens.near, lens.far);
    gl.uniform2f(this.at.shift, lens.shiftX, lens.shiftY);
    gl.uniform2f(this.at.canvas, this.canvas.width, this.canvas.height);
    gl.uniform3f(this.at.disc, lens.radius, LEAST_RADIUS, this.glowReach(glow));
    gl.uniform3f(this.at.unlit, ...UNLIT);
    gl.enable(gl.BLEND);
    if (this.glowReach(glow) > LEAST_RADIUS + 1) {
      this.pass(1, gl.ONE, gl.ONE_MINUS_SRC_COLOR, false);
    }
    this.pass(0, gl.ONE, gl.ONE_MINUS_SRC_ALPHA, lens.turned);
  }

  bind(unit, sampler, texture) {
    this.gl.activeTexture(this.gl.TEXTURE0 + unit);
    this.gl.bindTexture(this.gl.TEXTURE_2D, texture);
    this.gl.uniform1i(sampler, unit);
  }

  pass(glow, source, target, inDepth) {
    const gl = this.gl;
    gl.uniform1f(this.at.glow, glow);
    gl.blendFunc(source, target);
    if (inDepth) {
      gl.enable(gl.DEPTH_TEST);
      gl.depthFunc(gl.LEQUAL);
    } else {
      gl.disable(gl.DEPTH_TEST);
    }
    gl.drawElements(gl.TRIANGLES, 6 * this.table.pixels, gl.UNSIGNED_INT, 0);
  }

  /** The colour of a dot of the canvas that was drawn in this very turn, from the upper left corner. */
  colourAt(x, y) {
    const rgba = new Uint8Array(4);
    this.gl.readPixels(x, this.canvas.height - 1 - y, 1, 1, this.gl.RGBA, this.gl.UNSIGNED_BYTE, rgba);
    return [...rgba.subarray(0, 3)];
  }

  free() {
    this.gl.deleteProgram(this.program);
    this.gl.deleteVertexArray(this.vertices);
    this.gl.deleteBuffer(this.corners);
    this.gl.deleteTexture(this.places);
    this.gl.deleteTexture(this.colours);
  }
}
