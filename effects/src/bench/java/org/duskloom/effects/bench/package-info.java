/** How fast effects and the whole pipeline are; see the profile {@code bench} of this module. */
package org.duskloom.effects.bench;
