/**
 * Images and animations laid over the canvas. Files are read here: PNG with its animations and GIF by the package's own
 * readers, so that they give the same pixels on every JDK, JPEG by that of the JDK. Pixels are sRGB codes {@code
 * 0xAARRGGBB}, alpha not multiplied in, until {@link org.duskloom.effects.kit.area} takes them as light.
 */
package org.duskloom.effects.image;
