/**
 * The care taken in writing any file. A file is written beside its final name, brought to the disk and renamed when it is
 * complete; what stood there before stays until then. Sizes are bytes. Knows nothing of frames; everything that writes
 * stands behind it.
 */
package org.duskloom.engine.file;
