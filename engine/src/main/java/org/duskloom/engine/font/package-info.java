/**
 * The project's own letters, for labels and for light: dots in columns from the left and rows from the top of a line.
 * Uses nothing of the system and nothing of the other packages; previews and effects draw with it.
 */
package org.duskloom.engine.font;
