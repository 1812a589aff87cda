/** The picture by which a person checks at a glance what was found. */
package org.duskloom.engine.locate.picture;
