/**
 * Wording that every package shares: names and values quoted so that nothing of them acts on a terminal, numbers in the
 * fewest decimals that tell them apart. Knows no document and no place, and uses no other package of
 * the engine.
 */
package org.duskloom.engine.text;
