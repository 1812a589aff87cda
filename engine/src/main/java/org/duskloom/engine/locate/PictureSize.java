package org.duskloom.engine.locate;

/**
 * How many dots a picture has when it stands upright.
 *
 * @param width dots across
 * @param height dots down
 */
public record PictureSize(int width, int height) {
    int dots() {
        return Math.multiplyExact(width, height);
    }

    boolean isUpright() {
        return height > width;
    }

    @Override
    public String toString() {
        return width + " x " + height;
    }
}
