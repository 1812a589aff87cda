/**
 * Reading everything that a show needs: the timeline, its display or map, and the other files that they name, each read
 * once and remembered with its digest. Stands after {@code timeline} and {@code display}, and before {@code plan},
 * which compiles what is read here.
 */
package org.duskloom.engine.show;
