/** Light that breathes or hits, all of it at once. Shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.swell;
