"use strict";

/** Room round the display, as a share of its longer side, or as far as light reaches; as in the pictures. */
const MARGIN = 0.045;

/** How far the light of a pixel reaches, in radii of its disc. */
const GLOW_RADII = 5;

/** Discs of neighbours leave a quarter of their distance free; as in the pictures. */
const RADIUS_SHARE_OF_SPACING = 0.37;

/** Of the shorter side of what is seen: a few pixels far apart are lights, not areas; as in the pictures. */
const LARGEST_RADIUS_SHARE = 0.03;

/** How far the light of a pixel reaches in a window half as high as wide, or shaped as the display is. */
function glowOf(halfX, halfY, spacing) {
  const share = GLOW_RADII * LARGEST_RADIUS_SHARE;
  const most = Math.max(
    (2 * share * Math.min(halfX, halfY)) / (1 - 2 * share),
    (share * Math.max(halfX, halfY)) / (1 - share));
  return spacing > 0 ? Math.min(most, GLOW_RADII * RADIUS_SHARE_OF_SPACING * spacing) : most;
}

/**
 * From where the display is seen: turned about its middle, and from nearer or farther away, so that one can go in among
 * what hangs in front. Places are in units of the display from its middle, what is seen in dots of the canvas from its
 * middle, y up.
 */
class Camera {
  constructor(table, spacing) {
    const half = (values) => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    this.halfX = half(table.x);
    this.halfY = half(table.y);
    const longer = Math.max(this.halfX, this.halfY) || 1;
    const room = Math.max(2 * MARGIN * longer, glowOf(this.halfX, this.halfY, spacing));
    this.halfX += room;
    this.halfY += room;
    this.reach = Math.hypot(this.halfX, this.halfY, half(table.z));
    this.distance = 3 * this.reach;
    this.radius = spacing > 0 ? spacing * RADIUS_SHARE_OF_SPACING : Infinity;
    this.toFront();
  }

  toFront() {
    this.turnRadians = 0;
    this.tiltRadians = 0;
    this.zoom = 1;
    this.shiftX = 0;
    this.shiftY = 0;
  }

  turn(radians, tiltRadians) {
    this.turnRadians += radians;
    this.tiltRadians = Math.max(-1.5, Math.min(1.5, this.tiltRadians + tiltRadians));
  }

  /** Nearer by a factor, while what is seen at a place of the canvas stays there. */
  approach(factor, atX = 0, atY = 0) {
    const before = this.zoom;
    this.zoom = Math.max(0.2, Math.min(60, this.zoom * factor));
    const change = this.zoom / before;
    this.shiftX = atX - (atX - this.shiftX) * change;
    this.shiftY = atY - (atY - this.shiftY) * change;
  }

  /** What drawing needs of it, for a canvas of so many dots. */
  lens(width, height) {
    const cosTurn = Math.cos(this.turnRadians);
    const sinTurn = Math.sin(this.turnRadians);
    const cosTilt = Math.cos(this.tiltRadians);
    const sinTilt = Math.sin(this.tiltRadians);
    const dotsPerUnit = Math.min(width / (2 * this.halfX), height / (2 * this.halfY));
    return {
      // Rows: to the right, up, toward the audience.
      rows: [
        [cosTurn, 0, sinTurn],
        [sinTilt * sinTurn, cosTilt, -sinTilt * cosTurn],
        [-cosTilt * sinTurn, sinTilt, cosTilt * cosTurn],
      ],
      distance: this.distance / this.zoom,
      scale: dotsPerUnit * this.distance,
      near: this.distance * 0.004,
      far: this.distance / this.zoom + this.reach,
      shiftX: this.shiftX,
      shiftY: this.shiftY,
      radius: Math.min(this.radius, (LARGEST_RADIUS_SHARE * Math.min(width, height)) / dotsPerUnit),
      turned: this.turnRadians !== 0 || this.tiltRadians !== 0 || this.zoom !== 1,
    };
  }

  /** Where a place is seen: x, y, how far away, and the radius of a disc there; null behind the one who looks. */
  static seen(lens, x, y, z) {
    const [right, up, toward] = lens.rows.map((row) => row[0] * x + row[1] * y + row[2] * z);
    const away = lens.distance - toward;
    if (away < lens.near) {
      return null;
    }
    const dots = lens.scale / away;
    return { x: right * dots + lens.shiftX, y: up * dots + lens.shiftY, away, radius: lens.radius * dots };
  }
}
