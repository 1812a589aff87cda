/**
 * Files of frames, and the care taken in writing any file. A file is written beside its final name, brought to the disk
 * and renamed when it is complete; what stood there before stays until then. Sizes are bytes, frames and pixels count
 * from 0. Stands after {@code render}, whose frames it takes, and before {@code preview}, which writes its pictures
 * through this package.
 */
package org.duskloom.engine.output;
