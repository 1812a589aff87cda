/**
 * The care taken in writing any file. An output is made beside its final name, brought to the disk and renamed when it
 * and all that belong to it are complete; what stood there before stays until then. Every call that changes the disk
 * goes through one interface, by which tests let each of them fail in turn. Knows nothing of frames: everything that
 * writes files comes after it. Sizes are bytes.
 */
package org.duskloom.engine.file;
