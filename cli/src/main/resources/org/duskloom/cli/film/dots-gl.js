"use strict";

/** The night behind the pixels, and a pixel without light: the inks of the program's pictures. */
const NIGHT = [9 / 255, 10 / 255, 15 / 255];
const UNLIT = [44 / 255, 47 / 255, 56 / 255];

/** A disc is never smaller, in dots of the canvas: its middle dot has exactly its colour. */
const LEAST_RADIUS = 1.25;

/** How often the glow of all pixels together may cover the canvas. */
const GLOW_COVERS = 2.5;

const CORNERS = `#version 300 es
layout(location = 0) in vec2 corner;
layout(location = 1) in vec3 place;
layout(location = 2) in vec3 colour;
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
  vec3 eye = rows * place;
  float away = lens.x - eye.z;
  float dots = lens.y / away;
  light = colour;
  radius = max(disc.y, disc.x * dots);
  reach = glow > 0.5 ? min(radius * 5.0 + 1.0, max(disc.z, radius + 2.0)) : radius + 0.5;
  spot = corner * (reach + 1.0);
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
    drawn = vec4(light * 0.34 * left * left * left, 0.0);
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

/** Draws pixels by WebGL 2: a square for each, two passes, first what glows, then the discs. */
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
    this.buffers = [];
    this.program = this.linked(CORNERS, SPOTS);
    this.at = (name) => gl.getUniformLocation(this.program, name);
    this.vertices = gl.createVertexArray();
    gl.bindVertexArray(this.vertices);
    this.attribute(0, new Float32Array([-1, -1, 1, -1, -1, 1, 1, 1]), 2, gl.FLOAT, false, 0);
    this.attribute(1, this.places(), 3, gl.FLOAT, false, 1);
    this.colours = this.attribute(2, new Uint8Array(3 * this.table.pixels), 3, gl.UNSIGNED_BYTE, true, 1);
  }

  places() {
    const places = new Float32Array(3 * this.table.pixels);
    for (let i = 0; i < this.table.pixels; i++) {
      places.set([this.table.x[i], this.table.y[i], this.table.z[i]], 3 * i);
    }
    return places;
  }

  attribute(index, values, size, type, normalized, divisor) {
    const gl = this.gl;
    const buffer = gl.createBuffer();
    this.buffers.push(buffer);
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    gl.bufferData(gl.ARRAY_BUFFER, values, gl.DYNAMIC_DRAW);
    gl.enableVertexAttribArray(index);
    gl.vertexAttribPointer(index, size, type, normalized, 0, 0);
    gl.vertexAttribDivisor(index, divisor);
    return buffer;
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
      gl.bindBuffer(gl.ARRAY_BUFFER, this.colours);
      gl.bufferSubData(gl.ARRAY_BUFFER, 0, rgb);
      this.uploaded = rgb;
    }
    gl.viewport(0, 0, this.canvas.width, this.canvas.height);
    gl.clearColor(...NIGHT, 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    gl.useProgram(this.program);
    gl.bindVertexArray(this.vertices);
    gl.uniformMatrix3fv(this.at("rows"), true, lens.rows.flat());
    gl.uniform4f(this.at("lens"), lens.distance, lens.scale, lens.near, lens.far);
    gl.uniform2f(this.at("shift"), lens.shiftX, lens.shiftY);
    gl.uniform2f(this.at("canvas"), this.canvas.width, this.canvas.height);
    gl.uniform3f(this.at("disc"), lens.radius, LEAST_RADIUS, this.glowReach(glow));
    gl.uniform3f(this.at("unlit"), ...UNLIT);
    gl.enable(gl.BLEND);
    if (this.glowReach(glow) > LEAST_RADIUS + 1) {
      this.pass(1, gl.ONE, gl.ONE_MINUS_SRC_COLOR, false);
    }
    this.pass(0, gl.ONE, gl.ONE_MINUS_SRC_ALPHA, lens.turned);
  }

  pass(glow, source, target, inDepth) {
    const gl = this.gl;
    gl.uniform1f(this.at("glow"), glow);
    gl.blendFunc(source, target);
    if (inDepth) {
      gl.enable(gl.DEPTH_TEST);
      gl.depthFunc(gl.LEQUAL);
    } else {
      gl.disable(gl.DEPTH_TEST);
    }
    gl.drawArraysInstanced(gl.TRIANGLE_STRIP, 0, 4, this.table.pixels);
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
    this.buffers.forEach((buffer) => this.gl.deleteBuffer(buffer));
  }
}
