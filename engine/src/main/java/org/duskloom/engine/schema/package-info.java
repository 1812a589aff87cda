/**
 * What files may hold, as JSON Schema in the words of draft-07, made from the declarations by which the files are read:
 * so an editor can complete and explain while one types.
 */
package org.duskloom.engine.schema;
